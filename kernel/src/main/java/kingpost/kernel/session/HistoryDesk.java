package kingpost.kernel.session;

import java.util.List;
import java.util.Optional;
import kingpost.kernel.message.Replies;
import kingpost.kernel.message.Replies.PastCell;
import kingpost.kernel.message.Reply;
import kingpost.kernel.message.Request;
import kingpost.kernel.message.Request.History.Access;

/** Answers history requests from the store. */
final class HistoryDesk {

    private final HistoryStore store;

    HistoryDesk(HistoryStore store) {
        this.store = store;
    }

    Optional<Reply> answer(Exchange exchange) {
        Request.History request = Request.History.of(exchange.fields());
        return Optional.of(Replies.history(cells(request.access()), request.output()));
    }

    private List<PastCell> cells(Access access) {
        if (access instanceof Access.Range range) {
            return store.range(range.session(), range.start(), range.stop());
        }
        if (access instanceof Access.Search search) {
            return store.search(search.pattern(), search.count(), search.unique());
        }
        return store.tail(((Access.Tail) access).count());
    }
}
