package org.skewback.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ParentWatchTest {

    private static final Optional<ProcessHandle> SELF = Optional.of(ProcessHandle.current());

    private static Optional<ProcessHandle> watched(String value, String system) {
        return ParentWatch.watched(Map.of(ParentWatch.VARIABLE, value), system, SELF);
    }

    @Test
    void watchesTheProcessThatIsNamedOrOnWindowsTheParent() {
        String self = String.valueOf(ProcessHandle.current().pid());
        assertEquals(
                SELF,
                ParentWatch.watched(Map.of(ParentWatch.VARIABLE, self), "Linux", Optional.empty()));
        assertEquals(SELF, watched("123456789", "Windows 11"));
    }

    @Test
    void watchesNobodyWhereNobodyAsks() {
        assertEquals(Optional.empty(), ParentWatch.watched(Map.of(), "Linux", SELF));
        assertEquals(Optional.empty(), watched("none", "Linux"));
    }
}
