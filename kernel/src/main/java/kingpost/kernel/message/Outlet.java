package kingpost.kernel.message;

/** Where the kernel's messages leave. May be called from any thread; messages keep their order per destination. */
public interface Outlet {

    /** Sends to the one client whose identities the message carries. */
    void send(Channel channel, Message message);

    /** Sends to every subscriber; the message's identities hold the topic. May wait while clients are behind. */
    void publish(Message message);
}
