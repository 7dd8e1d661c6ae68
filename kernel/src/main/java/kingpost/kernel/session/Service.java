package kingpost.kernel.session;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.Map;
import java.util.Optional;
import kingpost.kernel.message.ContentException;
import kingpost.kernel.message.Reply;

/** Serves a request by the table: whatever happens, a request that expects a reply gets one, once. */
final class Service {

    private static final Logger LOG = System.getLogger("kingpost.session");
    private static final int LONGEST_TYPE = 60;

    private final Map<String, Handler> table;
    private final Envelopes envelopes;

    Service(Map<String, Handler> table, Envelopes envelopes) {
        this.table = Map.copyOf(table);
        this.envelopes = envelopes;
    }

    void serve(Exchange exchange) {
        String started = envelopes.now();
        answer(exchange).ifPresent(reply -> exchange.reply(reply, Map.of("started", started)));
    }

    private Optional<Reply> answer(Exchange exchange) {
        Handler handler = table.get(exchange.type());
        if (handler == null) {
            LOG.log(Level.WARNING, "Request " + printable(exchange.type()) + " on " + exchange.channel().label()
                    + ": unknown; it is left unanswered");
            return Optional.empty();
        }
        try {
            refuseMisplaced(exchange, handler);
            return handler.answer().to(exchange);
        } catch (ContentException e) {
            LOG.log(Level.WARNING, "Request " + exchange.type() + ": " + e.getMessage());
            return failure(handler, "RequestError", e.getMessage());
        } catch (RuntimeException | Error e) {
            Trouble.log(LOG, "A request could not be answered", e);
            return failure(handler, "KernelError", "The kernel could not answer " + exchange.type() + " ("
                    + e.getClass().getSimpleName() + "); its log has the details.");
        }
    }

    private static void refuseMisplaced(Exchange exchange, Handler handler) {
        if (!handler.channels().contains(exchange.channel())) {
            throw new ContentException(exchange.type() + ": does not belong on the " + exchange.channel().label()
                    + " channel; send it on another.");
        }
        exchange.request().header().subshell().ifPresent(id -> {
            throw new ContentException(exchange.type() + ": this kernel has no subshells; leave out subshell_id.");
        });
    }

    private static Optional<Reply> failure(Handler handler, String name, String message) {
        return handler.replyType().map(type -> new Reply.Failure(type, name, message));
    }

    private static String printable(String type) {
        String cut = type.length() > LONGEST_TYPE ? type.substring(0, LONGEST_TYPE) + "..." : type;
        return cut.replaceAll("[^\\x20-\\x7e]", "?");
    }
}
