package kingpost.kernel.message;

/** Where verified messages of clients arrive. Calls come from the thread of a socket and return at once. */
public interface Inbox {

    /** A message whose signature is good and whose frames are well formed. */
    void received(Channel channel, Message message);

    /** A client has subscribed to what is published, under this topic prefix. */
    void subscribed(String topic);

    /** Whether more messages may come now; when not, they wait in the socket. */
    boolean hasRoom();
}
