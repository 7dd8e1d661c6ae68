package kingpost.kernel.message;

/** What goes to every client: a cell's output, or a change of the kernel's state. */
public sealed interface Publication extends Content permits Output, Announcement { }
