package org.skewback.kernel.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class MagicTest {

    @Test
    void leavesAnEmptyLineWhereAMagicStood() {
        Magic.Parted parted = Magic.part("int a;\n%maven g:a:1.0\nint b;");
        assertEquals("int a;\n\nint b;", parted.java());
        assertEquals(List.of(new Magic("maven", "g:a:1.0", 2)), parted.magics());
    }

    @Test
    void aRemainderAtTheBeginningOfALineIsJava() {
        String code = "int a = 7\n% 4;\nint b = a\n  %a;";
        Magic.Parted parted = Magic.part(code);
        assertTrue(parted.magics().isEmpty());
        assertEquals(code, parted.java());
    }
}
