package kingpost.kernel.agent;

/** Whether the current thread is asked to stop; looked at wherever the agent itself waits or is called often. */
interface StopSign {

    /** @throws CellStopped when the current thread is the cell thread and its cell is to stop */
    void check();
}
