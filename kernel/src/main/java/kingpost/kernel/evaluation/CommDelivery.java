package kingpost.kernel.evaluation;

import java.util.List;
import java.util.Map;

/** Hands one comm message of the front end to the calc VM; what its action puts out belongs to the message. */
final class CommDelivery {

    private final Shell shell;
    private final CellOutput output;
    private final Interrupter interrupter;

    CommDelivery(Shell shell, CellOutput output) {
        this.shell = shell;
        this.output = output;
        interrupter = new Interrupter(shell.control(), shell.options().stopLimit());
    }

    Interrupter interrupter() {
        return interrupter;
    }

    /** Returns when the action has ended; the shell's lock is held, and given back meanwhile. */
    void deliver(String type, Map<String, Object> content, Map<String, Object> metadata, List<byte[]> buffers) {
        String id = String.valueOf(content.get("comm_id"));
        boolean opens = type.equals("comm_open");
        if (!opens && !shell.outputs().comms().containsKey(id)) {
            return;
        }
        shell.control().enter(shell.outputs().open(output), new Questions(shell, output, interrupter, false)::answer,
                interrupter::isAsked);
        shell.recoverFromIdleLoss().ifPresent(notice -> output.stream("stderr", notice + "\n"));
        if (opens) {
            shell.outputs().commOpened(id, String.valueOf(content.get("target_name")));
        } else if (type.equals("comm_close")) {
            shell.outputs().commClosed(id);
        }
        try {
            tell(shell.control().comm(type, content, metadata, buffers));
        } finally {
            interrupter.over();
        }
    }

    private void tell(Ending ending) {
        if (shell.control().loss().isPresent()) {
            output.stream("stderr", shell.recover() + "\n");
        } else if (ending instanceof Ending.Threw threw) {
            Ending.Thrown first = threw.chain().get(0);
            output.stream("stderr", "A comm message could not be handled: " + RuntimeErrors.headline(
                    RuntimeErrors.simple(first.type()), first.message().orElse("")) + "\n");
        }
    }
}
