/**
 * LaTeX mathematics, as people write it between dollar signs, to MathML that a browser shows without a script. Read
 * {@link kingpost.kernel.formula.Formula} first. Imports nothing of ours; knows nothing of notebooks.
 *
 * <p>Arguments and results are never null.
 */
package kingpost.kernel.formula;
