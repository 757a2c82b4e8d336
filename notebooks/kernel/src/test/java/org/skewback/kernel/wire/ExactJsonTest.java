package org.skewback.kernel.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ExactJsonTest {

    @Test
    void writesEachNumberWithTheDigitsItWasReadWith() throws IOException {
        String json =
                "{\"a\":[1.50,1e-7,1E5,-0.0,-0,0.1000000000000000055511151231257827,"
                        + "123456789012345678901234567890,1e999999999],\"b\":true,\"c\":null}";
        JsonNode read = ExactJson.read(json);
        assertEquals(json, new String(ExactJson.write(read), StandardCharsets.UTF_8));
        assertEquals(json, read.toString());
        assertEquals(1.5, read.path("a").get(0).asDouble());
        assertEquals(Integer.MAX_VALUE, read.path("a").get(7).asInt());
    }

    @Test
    void refusesWhatIsNotOneJsonValue() {
        for (String wrong : new String[] {"", "{", "{} {}", "[1,]", "NaN", "nul"}) {
            assertThrows(IOException.class, () -> ExactJson.read(wrong), wrong);
        }
        String deep = "[".repeat(100_000);
        assertThrows(IOException.class, () -> ExactJson.read(deep));
    }
}
