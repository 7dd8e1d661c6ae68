/**
 * Libraries that a cell adds: finds a jar and what it needs by Maven coordinates, as the reader's own Maven would.
 * Knows nothing of cells or class loaders. Read {@link kingpost.kernel.library.Libraries} first. Nothing is null
 * unless it says so.
 */
package kingpost.kernel.library;
