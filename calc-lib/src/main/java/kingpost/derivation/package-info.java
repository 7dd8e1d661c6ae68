/**
 * A worked calculation as a tree of values: prose, equations, figures, tables and sections. Read
 * {@link kingpost.derivation.Derivation} first, then {@link kingpost.derivation.Block} and
 * {@link kingpost.derivation.Expression}.
 *
 * <p>What is said belongs to {@code explain}, and how it looks in a format to {@code render}: there is no markup
 * in this package. Texts are plain text. A name that a person chose may hold any character, and every
 * renderer shows it as that character.
 *
 * <p>All types are immutable values; nothing is null.
 */
package kingpost.derivation;
