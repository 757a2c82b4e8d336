package org.skewback.benchmarks;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.skewback.numeric.SymmetricMatrix;

/**
 * Writes matrices in the Matrix Market exchange format (R. F. Boisvert, R. Pozo and K. A. Remington,
 * The Matrix Market exchange formats: initial design, NISTIR 5935, 1996).
 */
final class MatrixMarket {

    private MatrixMarket() {}

    /** Writes the lower triangle as a symmetric coordinate matrix, counted from 1. */
    static void write(SymmetricMatrix matrix, Path file) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.US_ASCII)) {
            out.write("%%MatrixMarket matrix coordinate real symmetric\n");
            out.write(matrix.order() + " " + matrix.order() + " " + matrix.entries() + "\n");
            matrix.forEach(
                    (row, column, value) -> {
                        try {
                            out.write((row + 1) + " " + (column + 1) + " " + value + "\n");
                        } catch (IOException e) {
                            throw new UncheckedIOException(e);
                        }
                    });
        }
    }
}
