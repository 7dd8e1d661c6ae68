/**
 * Numbers without rounding: fractions, fractions times a square root, and linear equations solved in fractions. Read
 * {@link kingpost.exact.Fraction} first. Pure numbers: no units and no trusses here. Arguments and results are not
 * null unless said.
 */
package kingpost.exact;
