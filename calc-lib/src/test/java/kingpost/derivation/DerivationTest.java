package kingpost.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

class DerivationTest {

    @Test
    void keepsEveryTextOnOneLine() {
        assertEquals(new Inline.Text("a b"), Phrase.of("a\r\nb").pieces().get(0));
        assertEquals(new Inline.Text("ab"), Phrase.of("a\u202Eb").pieces().get(0));
        assertEquals("t u", Derivation.of("t\nu", Block.Prose.of("x")).title());
    }

    @Test
    void hasAtLeastOneBlock() {
        assertThrows(IllegalArgumentException.class, () -> Derivation.of("nothing"));
    }

    @Test
    void joinsSentencesWithOneSpace() {
        assertEquals(List.of(new Inline.Text("One."), new Inline.Text(" "), new Inline.Text("Two.")),
                Phrase.of("One.").sentence("Two.").pieces());
        assertEquals(Phrase.of("One."), Phrase.EMPTY.sentence("One."));
        assertTrue(Phrase.of("").isEmpty());
    }

    @Test
    void rejectsARowThatDoesNotFitItsColumns() {
        List<Table.Column> columns = List.of(Table.Column.left("a"), Table.Column.right("b"));
        List<List<Phrase>> rows = List.of(List.of(Phrase.of("only one")));
        IllegalArgumentException thrown = assertThrows(IllegalArgumentException.class,
                () -> new Table(Phrase.EMPTY, columns, rows, false));
        assertEquals("Table: a row has 1 cells under 2 columns; give one cell for each column", thrown.getMessage());
    }
}
