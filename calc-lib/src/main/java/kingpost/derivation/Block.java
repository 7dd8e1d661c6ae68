package kingpost.derivation;

import java.util.List;
import java.util.Objects;

/** A part of a derivation that stands on its own between others. */
public sealed interface Block
        permits Block.Prose, Block.Equation, Block.Equations, Block.Listing, Block.Section, Figure, Table {

    <R> R accept(Visitor<R> visitor);

    /** One method for each kind of block. */
    interface Visitor<R> {
        R prose(Prose prose);

        R equation(Equation equation);

        R equations(Equations equations);

        R figure(Figure figure);

        R table(Table table);

        R listing(Listing listing);

        R section(Section section);
    }

    /** A paragraph. */
    record Prose(Phrase phrase) implements Block {
        public Prose {
            Objects.requireNonNull(phrase, "phrase");
        }

        public static Prose of(String text) {
            return new Prose(Phrase.of(text));
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.prose(this);
        }
    }

    /**
     * One formula on its own line.
     *
     * @param remark words beside it, may be empty
     */
    record Equation(Expression expression, String remark) implements Block {
        public Equation {
            Objects.requireNonNull(expression, "expression");
            remark = PlainText.line(remark);
        }

        public static Equation of(Expression expression) {
            return new Equation(expression, "");
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.equation(this);
        }
    }

    /** Lines of one argument under each other, lined up at their relation: with symbols, with numbers, the answer. */
    record Equations(List<EquationLine> lines) implements Block {
        public Equations {
            lines = List.copyOf(lines);
            if (lines.isEmpty()) {
                throw new IllegalArgumentException("Equations: there are no lines; give at least one");
            }
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.equations(this);
        }
    }

    /** Points one under another, with numbers where their order matters. */
    record Listing(boolean numbered, List<Phrase> items) implements Block {
        public Listing {
            items = List.copyOf(items);
            if (items.isEmpty()) {
                throw new IllegalArgumentException("List: there are no items; give at least one");
            }
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.listing(this);
        }
    }

    /** Blocks under a heading; sections within sections have lower headings. */
    record Section(Phrase title, List<Block> blocks) implements Block {
        public Section {
            Objects.requireNonNull(title, "title");
            blocks = List.copyOf(blocks);
        }

        public static Section of(String title, List<Block> blocks) {
            return new Section(Phrase.of(title), blocks);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.section(this);
        }
    }
}
