/**
 * The forms in which a value can be shown. Read {@link kingpost.kernel.display.MimeBundle} first. Imports nothing
 * of ours; how a value becomes a bundle is decided in the calc VM ({@code agent}) from what calc-lib offers.
 */
package kingpost.kernel.display;
