package org.skewback.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class MagicTest {

    @Test
    void leavesABlankLineWhereAMagicStood() {
        Magic.Parted parted = Magic.part("int a;\n%maven g:a:1.0\nint b;");
        assertEquals("int a;\n              \nint b;", parted.java());
        assertEquals(List.of(new Magic("maven", "g:a:1.0", 2)), parted.magics());
    }

    @Test
    void aRemainderAtTheBeginningOfALineIsJava() {
        String code = "int a = 7\n% 4;\nint b = a\n  %a;\nint c = b\n%a + 1;";
        Magic.Parted parted = Magic.part(code);
        assertTrue(parted.magics().isEmpty());
        assertEquals(code, parted.java());
    }

    @Test
    void whatStandsInATextBlockOrACommentIsNoMagic() {
        String code =
                """
                String s = \"""
                %maven a:b:1
                \\\""" %word
                %word
                \""";
                /*
                %word
                */
                """;
        Magic.Parted parted = Magic.part(code);
        assertTrue(parted.magics().isEmpty());
        assertEquals(code, parted.java());
    }

    @Test
    void theArgumentOfAMagicIsNotReadAsJava() {
        Magic.Parted parted = Magic.part("%classpath /a\"b\n%jars '/*.jar\nint a;\n%maven g:a:1");
        assertEquals(List.of(1, 2, 4), parted.magics().stream().map(Magic::line).toList());
    }

    @Test
    void linesMayEndAsWindowsEndsThem() {
        Magic.Parted parted = Magic.part("%maven g:a:1.0\r\nint a;\r\n");
        assertEquals(List.of(new Magic("maven", "g:a:1.0", 1)), parted.magics());
        assertEquals(" ".repeat(15) + "\nint a;\r\n", parted.java());
    }
}
