package kingpost.kernel.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NotebookFileTest {

    /** As the reference library writes it: nbformat 5.5.0, {@code nbformat.write}. */
    private static final String REFERENCE = """
            {
             "cells": [
              {
               "attachments": {
                "plan.txt": {
                 "text/plain": [
                  "a\\n",
                  "b"
                 ]
                }
               },
               "cell_type": "markdown",
               "id": "intro",
               "metadata": {},
               "source": [
                "# Tie \\"A\\"\\n",
                "F = σ·A, \uD835\uDF0E\\t\\\\"
               ]
              },
              {
               "cell_type": "code",
               "execution_count": 2,
               "id": "c-1",
               "metadata": {
                "jupyter": {
                 "source_hidden": true
                },
                "numbers": [
                 1,
                 1.0,
                 0.5,
                 1e-05,
                 1e+16,
                 123456789012345678901234,
                 -2.5e-07
                ],
                "tags": [
                 "parameters"
                ]
               },
               "outputs": [
                {
                 "name": "stdout",
                 "output_type": "stream",
                 "text": [
                  "one\\n",
                  "two\\n"
                 ]
                },
                {
                 "data": {
                  "application/vnd.kingpost.result+json": {
                   "a\\nb": "c\\nd"
                  },
                  "image/png": "AAAA\\nBBBB",
                  "image/svg+xml": [
                   "<svg>\\n",
                   "</svg>"
                  ],
                  "text/plain": [
                   "3"
                  ]
                 },
                 "execution_count": 2,
                 "metadata": {},
                 "output_type": "execute_result"
                }
               ],
               "source": [
                "int a = 1;\\r\\n",
                "a + 2"
               ]
              },
              {
               "cell_type": "raw",
               "id": "r",
               "metadata": {},
               "source": []
              }
             ],
             "metadata": {
              "kernelspec": {
               "display_name": "Kingpost",
               "language": "java",
               "name": "kingpost"
              },
              "our own": {}
             },
             "nbformat": 4,
             "nbformat_minor": 5
            }
            """;

    @TempDir
    Path folder;

    @Test
    void writesBackWhatTheReferenceLibraryWrote() {
        assertEquals(REFERENCE, NotebookWriter.write(NotebookReader.parse("n", REFERENCE)));
    }

    @Test
    void joinsTextsThatTheFileHasInLines() {
        Notebook notebook = NotebookReader.parse("n", REFERENCE);
        assertEquals("# Tie \"A\"\nF = σ·A, \uD835\uDF0E\t\\", notebook.cells().get(0).source());
        Cell.Code code = (Cell.Code) notebook.cells().get(1);
        assertEquals("int a = 1;\r\na + 2", code.source());
        assertEquals("one\ntwo\n", code.outputs().get(0).get("text"));
        assertEquals("<svg>\n</svg>", Trees.map(code.outputs().get(1), "data").get("image/svg+xml"));
        assertEquals(OptionalLong.of(2), code.executionCount());
        assertEquals(Optional.of("Tie \"A\""), notebook.title());
    }

    @Test
    void givesOlderFilesTheIdsTheyLackAndAlwaysTheSame() {
        String old = "{\"nbformat\":4,\"nbformat_minor\":2,\"metadata\":{\"orig_nbformat\":3},\"cells\":["
                + "{\"cell_type\":\"code\",\"metadata\":{\"trusted\":true},\"source\":\"1\",\"outputs\":[],"
                + "\"execution_count\":null},"
                + "{\"cell_type\":\"code\",\"metadata\":{},\"source\":[\"1\"],\"outputs\":[],\"execution_count\":null},"
                + "{\"cell_type\":\"raw\",\"id\":\"not allowed!\",\"metadata\":{},\"source\":\"\"}]}";
        Notebook first = NotebookReader.parse("n", old);
        assertEquals(first, NotebookReader.parse("n", old));
        assertEquals(5, first.minor());
        assertEquals(Map.of(), first.metadata());
        assertEquals(Map.of(), first.cells().get(0).metadata());
        List<String> ids = first.cells().stream().map(Cell::id).toList();
        assertEquals(3, ids.stream().distinct().count());
        assertTrue(ids.stream().allMatch(id -> id.matches("[A-Za-z0-9_-]{1,64}")), ids.toString());
    }

    @Test
    void givesASecondCellWithTheSameIdAnotherOne() {
        Notebook notebook = NotebookReader.parse("n", "{\"nbformat\":4,\"nbformat_minor\":5,\"metadata\":{},\"cells\":["
                + "{\"cell_type\":\"raw\",\"id\":\"x\",\"metadata\":{},\"source\":\"1\"},"
                + "{\"cell_type\":\"raw\",\"id\":\"x\",\"metadata\":{},\"source\":\"2\"}]}");
        assertEquals(2, notebook.cells().stream().map(Cell::id).collect(Collectors.toSet()).size());
    }

    @Test
    void readsTheLanguageFromEitherPlace() {
        assertEquals(Optional.of("java"), NotebookReader.parse("n", REFERENCE).language());
        assertEquals(Optional.of("python"), NotebookReader.parse("n", "{\"nbformat\":4,\"metadata\":{\"language_info\":"
                + "{\"name\":\"Python\"}},\"cells\":[]}").language());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "not json at all|is not JSON",
        "{\"nbformat\": 4|is not JSON",
        "[]|the file should be a JSON object",
        "{}|is JSON but not a notebook",
        "{\"nbformat\": \"4\", \"cells\": []}|is JSON but not a notebook",
        "{\"nbformat\": 3, \"worksheets\": []}|has notebook format 3",
        "{\"nbformat\": 4, \"cells\": {}}|cells should be a list",
        "{\"nbformat\": 4, \"cells\": [1]}|cell 1 should be a JSON object",
        "{\"nbformat\": 4, \"cells\": [{\"cell_type\": \"poem\", \"source\": \"\"}]}|cell 1 has the type \"poem\"",
        "{\"nbformat\": 4, \"cells\": [{\"cell_type\": \"raw\", \"source\": 7}]}|source of cell 1",
        "{\"nbformat\": 4, \"cells\": [], \"metadata\": 1}|metadata should be a JSON object",
    })
    void saysWhatIsWrongWithAFileThatIsNoNotebook(String text, String message) {
        NotebookProblem problem = assertThrows(NotebookProblem.class, () -> NotebookReader.parse("tie.ipynb", text));
        assertTrue(problem.getMessage().startsWith("Notebook tie.ipynb: "), problem.getMessage());
        assertTrue(problem.getMessage().contains(message), problem.getMessage());
    }

    @Test
    void saysSoWhenThereIsNoFileOrItIsNoText() throws IOException {
        Path missing = folder.resolve("missing.ipynb");
        assertEquals("Notebook " + missing + ": there is no such file; check the path.",
                assertThrows(NotebookProblem.class, () -> NotebookReader.read(missing)).getMessage());
        assertTrue(assertThrows(NotebookProblem.class, () -> NotebookReader.read(folder)).getMessage()
                .contains("is a folder"));
        Path binary = Files.write(folder.resolve("binary.ipynb"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        assertTrue(assertThrows(NotebookProblem.class, () -> NotebookReader.read(binary)).getMessage()
                .contains("is not UTF-8 text"));
    }
}
