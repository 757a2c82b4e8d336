package org.skewback.desk.issue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Notebook;

/** The title of a sheet is its first heading. */
class TitlesTest {

    @ParameterizedTest
    @CsvSource({
        "'# 06 Form of the rib',06 Form of the rib",
        "'text\n\n## The *second* `level` ##\nmore',The second level",
        "'```\n# a comment in code\n```\n# True title',True title",
        "'#no heading, for want of a space',otherwise",
        "'    # code, being indented',otherwise",
        "'#',otherwise"
    })
    void theFirstHeadingIsFound(String markdown, String title) {
        Cell cell =
                new Cell(
                        "a",
                        Cell.Kind.MARKDOWN,
                        markdown,
                        JsonNodeFactory.instance.objectNode(),
                        null,
                        List.of());
        assertEquals(
                title,
                Titles.of(
                        new Notebook(List.of(cell), JsonNodeFactory.instance.objectNode()),
                        "otherwise"));
    }
}
