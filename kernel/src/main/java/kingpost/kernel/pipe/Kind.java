package kingpost.kernel.pipe;

/**
 * The sorts of frame, with the fields of each in order. An {@code id} pairs a request with its answer; a
 * {@code cell} is the kernel's number for the cell that a piece of output belongs to.
 */
public enum Kind {

    // ---- kernel VM to calc VM

    /** {@code id, names: list of text, bytes: list of bytes}: keep these classes for loading; id 0 wants no answer. */
    LOAD,
    /**
     * {@code id, cell, class, method, show, once}: call a static method without parameters on the cell thread; with
     * {@code show}, turn its value into forms as well; with {@code once}, nothing will name the class again.
     */
    INVOKE,
    /** {@code id, class, field, method}: the names that fit inside quotes after that variable and method. */
    NAMES,
    /**
     * {@code id, classes: list of text, fields: list of text}: set these variables to null to free memory; the answer
     * is the share of the heap that is free then, in per cent.
     */
    RELEASE,
    /** {@code id, paths: list of text}: add jars or folders to what cells can load. */
    ADD_PATH,
    /** {@code id}: the call with this id is to stop wherever the agent itself waits for something. */
    STOP,
    /** {@code id}: interrupt the cell thread and close what it waits on; the second try at stopping. */
    STOP_HARD,
    /** {@code id, state: "line" | "end" | "refused" | "stopped", line}: what the user typed. */
    INPUT_ANSWER,
    /** {@code id, cell, type, content: map, metadata: map, buffers: list of bytes}: a comm message. */
    COMM_IN,
    /** {@code id}: answer, although a cell may be running. */
    PING,

    // ---- calc VM to kernel VM

    /** {@code token}: the first frame, which proves who is calling. */
    HELLO,
    /** {@code id, value}: the answer to LOAD, NAMES (a list of text), RELEASE, ADD_PATH or PING. */
    ANSWER,
    /**
     * {@code id, ending: "returned" | "threw" | "unshown" | "unresolved" | "stopped", detail}: INVOKE or COMM_IN ended;
     * unshown means that the call returned, but its value could not be turned into forms.
     */
    ENDED,
    /** {@code cell, name, text}: a piece of stdout or stderr. */
    STREAM,
    /** {@code cell, data: map, displayId or null}: show these forms. */
    DISPLAY,
    /** {@code cell, data: map, displayId}: replace what was shown under this name. */
    UPDATE,
    /** {@code cell, wait}: clear the cell's output. */
    CLEAR,
    /** {@code id, cell, prompt, password}: ask the user for a line. */
    INPUT,
    /** {@code id, cell, paths: list of text}: let cells be compiled and run with these jars and folders. */
    CLASS_PATH,
    /** {@code cell, payload: map}: for the execute reply. */
    PAYLOAD,
    /** {@code cell, type, content: map, metadata: map, buffers: list of bytes}: a comm message. */
    COMM_OUT,
    /** {@code cell}: nothing in the calc VM can write to this cell any more. */
    FORGET,
    /** {@code reason}: the calc VM ends itself, and why. */
    DYING;

    /** How the names of variables begin that stand for the values of expressions. */
    public static final String TEMPORARY = "$value$";

    private static final Kind[] ALL = values();

    static Kind at(int ordinal) {
        if (ordinal < 0 || ordinal >= ALL.length) {
            throw new IllegalArgumentException("Pipe: no frame kind has number " + ordinal + ".");
        }
        return ALL[ordinal];
    }
}
