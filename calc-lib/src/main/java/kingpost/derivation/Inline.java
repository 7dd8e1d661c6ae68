package kingpost.derivation;

import java.util.Objects;

/** A piece of a sentence. */
public sealed interface Inline {

    <R> R accept(Visitor<R> visitor);

    /** One method for each kind of piece. */
    interface Visitor<R> {
        R text(Text text);

        R emphasis(Emphasis emphasis);

        R strong(Strong strong);

        R formula(Formula formula);
    }

    /** Words as they stand; a line end counts as a space. */
    record Text(String text) implements Inline {
        public Text {
            text = PlainText.line(text);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.text(this);
        }
    }

    /** Words that are stressed. */
    record Emphasis(String text) implements Inline {
        public Emphasis {
            text = PlainText.line(text);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.emphasis(this);
        }
    }

    /** Words that stand out when the page is skimmed: a joint, a result. */
    record Strong(String text) implements Inline {
        public Strong {
            text = PlainText.line(text);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.strong(this);
        }
    }

    /** Mathematics within the line. */
    record Formula(Expression expression) implements Inline {
        public Formula {
            Objects.requireNonNull(expression, "expression");
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.formula(this);
        }
    }
}
