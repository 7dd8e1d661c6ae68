package kingpost.kernel.session;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kingpost.kernel.display.MimeBundle;
import kingpost.kernel.evaluation.CellOutput;
import kingpost.kernel.evaluation.Evaluator;
import kingpost.kernel.message.Frame;
import kingpost.kernel.message.Replies;
import kingpost.kernel.message.Reply;
import kingpost.kernel.message.Request;

/**
 * Comms: hands clients' messages to the evaluator, in order, and closes at once what nobody here wants to open.
 * Output that a message causes belongs to that message.
 */
final class CommDesk {

    private final EvaluatorSlot evaluator;
    private final CellDesk cells;

    CommDesk(EvaluatorSlot evaluator, CellDesk cells) {
        this.evaluator = evaluator;
        this.cells = cells;
    }

    /** Handles comm_open, comm_msg and comm_close. */
    Optional<Reply> message(Exchange exchange) {
        Request.Comm comm = Request.Comm.of(exchange.fields());
        OutputGate gate = cells.gate(exchange, InputPrompt.NONE);
        ClosingWatch output = new ClosingWatch(gate, comm.id());
        List<byte[]> buffers = exchange.request().buffers().stream().map(Frame::bytes).toList();
        evaluator.get().comm(exchange.type(), comm.fields(), exchange.request().metadata(), buffers, output);
        boolean unwanted = exchange.type().equals("comm_open") && !output.closed
                && !evaluator.get().comms().containsKey(comm.id());
        if (unwanted) {
            gate.comm("comm_close", Map.of("comm_id", comm.id(), "data", Map.of()), Map.of(), List.of());
        }
        gate.finish();
        return Optional.empty();
    }

    /** Open comms; none as long as the evaluator is not there. */
    Optional<Reply> info(Exchange exchange) {
        Optional<String> target = Request.CommInfo.of(exchange.fields()).target();
        Map<String, String> open = evaluator.ifReady().map(Evaluator::comms).orElse(Map.of());
        return Optional.of(Replies.commInfo(open.entrySet().stream()
                .filter(comm -> target.isEmpty() || target.get().equals(comm.getValue()))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue))));
    }

    /** Passes output on and notes whether the evaluator has closed the comm itself. */
    private static final class ClosingWatch implements CellOutput {

        private final CellOutput gate;
        private final String id;
        private volatile boolean closed;

        ClosingWatch(CellOutput gate, String id) {
            this.gate = gate;
            this.id = id;
        }

        @Override
        public void stream(String name, String text) {
            gate.stream(name, text);
        }

        @Override
        public void display(MimeBundle bundle, Optional<String> displayId) {
            gate.display(bundle, displayId);
        }

        @Override
        public void update(MimeBundle bundle, String displayId) {
            gate.update(bundle, displayId);
        }

        @Override
        public void clear(boolean wait) {
            gate.clear(wait);
        }

        @Override
        public Optional<String> input(String prompt, boolean password) throws InterruptedException {
            return gate.input(prompt, password);
        }

        @Override
        public void comm(String type, Map<String, Object> content, Map<String, Object> metadata,
                         List<byte[]> buffers) {
            closed = closed || type.equals("comm_close") && id.equals(content.get("comm_id"));
            gate.comm(type, content, metadata, buffers);
        }
    }
}
