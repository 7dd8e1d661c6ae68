/**
 * What the notebook messaging protocol says, as records: headers, requests, replies and publications, with their
 * field names and defaults. No JSON, no sockets, no Java cells: the content of a message is a tree of {@code Map},
 * {@code List}, {@code String}, {@code Number}, {@code Boolean} and null here. Read
 * {@link kingpost.kernel.message.Message} first, then {@link kingpost.kernel.message.Request}.
 */
package kingpost.kernel.message;
