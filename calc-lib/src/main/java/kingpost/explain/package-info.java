/**
 * From what {@code statics} found to what a teacher says about it: the order of the steps, the sentences, the
 * equations as they are written down. Every word of prose is here, and nothing is computed here but how to say it.
 * Read {@link kingpost.explain.SolutionExplanation} first, then {@link kingpost.explain.JointExplanation}.
 *
 * <p>A sentence says what is so at its joint. Where the same thing happens again, the next of several wordings is
 * taken, in a fixed order, so that the same truss always gives the same text. Nothing is null.
 */
package kingpost.explain;
