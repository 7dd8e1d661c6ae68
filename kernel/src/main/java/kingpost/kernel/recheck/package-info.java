/**
 * Whether a notebook still says what its saved outputs say: compares them with those of a fresh run. Read
 * {@link kingpost.kernel.recheck.Recheck} first. Runs nothing itself.
 */
package kingpost.kernel.recheck;
