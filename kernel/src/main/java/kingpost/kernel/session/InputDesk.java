package kingpost.kernel.session;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.locks.ReentrantLock;
import kingpost.kernel.message.Channel;
import kingpost.kernel.message.Fields;
import kingpost.kernel.message.Frame;
import kingpost.kernel.message.Message;
import kingpost.kernel.message.Reply;
import kingpost.kernel.message.Request;

/**
 * Asks the client whose cell runs for a line of input, one question at a time. Only that client's answer to that
 * question counts; answers that nobody waits for are dropped.
 */
final class InputDesk {

    private final ReentrantLock oneAtATime = new ReentrantLock();
    private volatile Question open;
    private volatile Exchange cell;

    private record Question(List<Frame> client, List<String> parents, CompletableFuture<Optional<String>> answer) { }

    /** Cells may ask from now on, until {@link #cellEnded}. */
    void cellBegan(Exchange exchange) {
        cell = exchange;
    }

    void cellEnded() {
        cell = null;
        cancel();
    }

    /**
     * The client's line; at once the end of input when this cell does not run any more.
     *
     * @throws InterruptedException when the cell is interrupted while it waits
     */
    Optional<String> ask(Exchange exchange, String prompt, boolean password) throws InterruptedException {
        oneAtATime.lockInterruptibly();
        try {
            return exchange == cell ? await(exchange, prompt, password) : Optional.empty();
        } finally {
            open = null;
            oneAtATime.unlock();
        }
    }

    /** A message on the stdin channel. */
    void received(Message message) {
        Question question = open;
        if (question != null && message.type().equals("input_reply")
                && message.identities().equals(question.client())
                && message.parent().map(parent -> question.parents().contains(parent.id())).orElse(true)) {
            String value = Request.InputReply.of(new Fields(message.type(), message.content())).value();
            question.answer().complete(value.equals(Request.InputReply.END_OF_INPUT) ? Optional.empty()
                    : Optional.of(value));
        }
    }

    /** Ends the wait for the open question, if there is one. */
    void cancel() {
        Question question = open;
        if (question != null) {
            question.answer().cancel(false);
        }
    }

    private Optional<String> await(Exchange exchange, String prompt, boolean password) throws InterruptedException {
        CompletableFuture<Optional<String>> answer = new CompletableFuture<>();
        Message request = exchange.compose(new Reply.InputRequest(prompt, password));
        open = new Question(exchange.request().identities(),
                List.of(request.header().id(), exchange.request().header().id()), answer);
        exchange.send(Channel.STDIN, request);
        try {
            return answer.get();
        } catch (CancellationException e) {
            throw new InterruptedException("the wait for input was ended");
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        }
    }
}
