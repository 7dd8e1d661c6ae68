package kingpost.explain;

import java.util.ArrayList;
import java.util.List;

import kingpost.derivation.Block;
import kingpost.derivation.Block.Listing;
import kingpost.derivation.Block.Prose;
import kingpost.derivation.Block.Section;
import kingpost.derivation.Derivation;
import kingpost.derivation.Figure;
import kingpost.derivation.Phrase;
import kingpost.derivation.Table;

/** A derivation with a line of text for each figure, so that golden files hold words and not drawings. */
final class WordsOnly implements Block.Visitor<Block> {

    private WordsOnly() {
    }

    static Derivation of(Derivation derivation) {
        return new Derivation(derivation.title(), blocks(derivation.blocks()));
    }

    private static List<Block> blocks(List<Block> blocks) {
        return blocks.stream().map(block -> block.accept(new WordsOnly())).toList();
    }

    /** Every phrase of running text and of lists, in order; headings, captions and cells are left out. */
    static List<Phrase> phrases(List<Block> blocks) {
        List<Phrase> phrases = new ArrayList<>();
        for (Block block : blocks) {
            if (block instanceof Prose prose) {
                phrases.add(prose.phrase());
            } else if (block instanceof Listing listing) {
                phrases.addAll(listing.items());
            } else if (block instanceof Section section) {
                phrases.addAll(phrases(section.blocks()));
            }
        }
        return phrases;
    }

    @Override
    public Block prose(Block.Prose prose) {
        return prose;
    }

    @Override
    public Block equation(Block.Equation equation) {
        return equation;
    }

    @Override
    public Block equations(Block.Equations equations) {
        return equations;
    }

    @Override
    public Block figure(Figure figure) {
        return new Block.Prose(Phrase.of("(Figure) ").then(figure.caption()));
    }

    @Override
    public Block table(Table table) {
        return table;
    }

    @Override
    public Block listing(Block.Listing listing) {
        return listing;
    }

    @Override
    public Block section(Block.Section section) {
        return new Block.Section(section.title(), blocks(section.blocks()));
    }
}
