package org.skewback.kernel.wire;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.node.NumericNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;

/** A JSON number that is written with the digits it was read with. */
final class WrittenNumber extends NumericNode {

    private static final long serialVersionUID = 1L;

    private final String text;
    private final BigDecimal value;

    WrittenNumber(String text, BigDecimal value) {
        this.text = text;
        this.value = value;
    }

    @Override
    public JsonToken asToken() {
        return JsonToken.VALUE_NUMBER_FLOAT;
    }

    @Override
    public JsonParser.NumberType numberType() {
        return JsonParser.NumberType.DOUBLE;
    }

    @Override
    public boolean isDouble() {
        return true;
    }

    @Override
    public boolean isFloatingPointNumber() {
        return true;
    }

    @Override
    public Number numberValue() {
        return doubleValue();
    }

    @Override
    public int intValue() {
        return (int) doubleValue();
    }

    @Override
    public long longValue() {
        return (long) doubleValue();
    }

    @Override
    public double doubleValue() {
        return Double.parseDouble(text);
    }

    @Override
    public BigDecimal decimalValue() {
        return value;
    }

    @Override
    public BigInteger bigIntegerValue() {
        return value.toBigInteger();
    }

    @Override
    public boolean canConvertToInt() {
        return isBetween(Integer.MIN_VALUE, Integer.MAX_VALUE);
    }

    @Override
    public boolean canConvertToLong() {
        return isBetween(Long.MIN_VALUE, Long.MAX_VALUE);
    }

    private boolean isBetween(long least, long most) {
        return value.compareTo(BigDecimal.valueOf(least)) >= 0
                && value.compareTo(BigDecimal.valueOf(most)) <= 0;
    }

    @Override
    public String asText() {
        return text;
    }

    @Override
    public void serialize(JsonGenerator generator, SerializerProvider provider) throws IOException {
        generator.writeNumber(text);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WrittenNumber written && written.text.equals(text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }
}
