package kingpost.kernel.agent;

/** Tells in one line of a thread that a cell started and that ended by a failure; nobody waits for its outcome. */
final class LostThreads implements Thread.UncaughtExceptionHandler {

    @Override
    public void uncaughtException(Thread thread, Throwable failure) {
        if (CellStopped.isIn(failure)) {
            return;
        }
        var told = Thrown.chain(failure).get(0);
        String type = String.valueOf(told.get("class"));
        Object message = told.get("message");
        System.err.println("Thread " + thread.getName() + ", started by a cell, ended by "
                + type.substring(type.lastIndexOf('.') + 1).replaceFirst("^\\$JShell\\$\\w+\\$", "").replace('$', '.')
                + (message == null ? "" : ": " + message));
    }
}
