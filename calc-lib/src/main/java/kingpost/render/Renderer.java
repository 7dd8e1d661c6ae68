package kingpost.render;

import kingpost.derivation.Block;
import kingpost.derivation.Derivation;

/** Writes derivations in one format. Thread-safe; the same tree gives the same text. */
public interface Renderer {

    /** The whole derivation with its title. */
    String render(Derivation derivation);

    /** One block as it would stand in a derivation. */
    String render(Block block);
}
