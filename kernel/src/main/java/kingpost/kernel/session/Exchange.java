package kingpost.kernel.session;

import java.util.Map;
import java.util.Optional;
import kingpost.kernel.message.Channel;
import kingpost.kernel.message.Content;
import kingpost.kernel.message.Fields;
import kingpost.kernel.message.Message;
import kingpost.kernel.message.Outlet;
import kingpost.kernel.message.Publication;
import kingpost.kernel.message.Reply;

/** One request and what is said about it: everything that goes out through here has the request as its parent. */
final class Exchange {

    private final Channel channel;
    private final Message request;
    private final long arrival;
    private final Envelopes envelopes;
    private final Outlet outlet;

    /**
     * @param arrival which message of its queue it was, counted up
     */
    Exchange(Channel channel, Message request, long arrival, Envelopes envelopes, Outlet outlet) {
        this.channel = channel;
        this.request = request;
        this.arrival = arrival;
        this.envelopes = envelopes;
        this.outlet = outlet;
    }

    Channel channel() {
        return channel;
    }

    Message request() {
        return request;
    }

    String type() {
        return request.type();
    }

    long arrival() {
        return arrival;
    }

    Fields fields() {
        return new Fields(type(), request.content());
    }

    void publish(Publication publication) {
        outlet.publish(envelopes.published(Optional.of(request.header()), publication));
    }

    /** Answers on the channel on which the request came. */
    void reply(Reply reply, Map<String, Object> metadata) {
        outlet.send(channel, envelopes.to(request.identities(), request.header(), reply, metadata));
    }

    /** A message to the client of this request, not yet sent. */
    Message compose(Content content) {
        return envelopes.to(request.identities(), request.header(), content, Map.of());
    }

    /** Sends on another channel than that of the request. */
    void send(Channel elsewhere, Message message) {
        outlet.send(elsewhere, message);
    }
}
