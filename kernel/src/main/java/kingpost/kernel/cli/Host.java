package kingpost.kernel.cli;

/** What surrounds a kernel: signals, the process that started it, the processes that it has started. */
public interface Host {

    /** Nothing around it: for a kernel in a test's VM. */
    Host NONE = new Host() {
        @Override
        public void begins(Runnable interrupt, Runnable end) {
            // nobody interrupts or ends it but its clients
        }

        @Override
        public void ends(int status) {
            // the VM goes on
        }

        @Override
        public void ended() {
            // the VM goes on
        }
    };

    /**
     * The kernel serves from now on.
     *
     * @param interrupt stops the running cell
     * @param end       ends the kernel
     */
    void begins(Runnable interrupt, Runnable end);

    /**
     * The kernel begins to end.
     *
     * @param status the process's exit status, in case the end must be forced
     */
    void ends(int status);

    /** The kernel has closed everything that it knows of. */
    void ended();
}
