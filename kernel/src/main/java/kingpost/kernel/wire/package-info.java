/**
 * Messages as signed frames, and the file that says where and with which key to speak. A wrong answer to a client
 * is looked for in {@code session}; a message that is refused or garbled, here. Read
 * {@link kingpost.kernel.wire.WireFormat} first. All JSON goes through {@link kingpost.kernel.wire.Json}.
 */
package kingpost.kernel.wire;
