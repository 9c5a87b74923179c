// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.solver.making.MovementPart;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.stream.Collectors;

/** A line for each part: name, count, material, mass of one, teeth, modules, hash of its STL file (RFC 4180). */
final class Manifest {
    private static final double GRAMS = 1000;
    private static final int DECIMALS = 2;

    private final StringBuilder text =
            new StringBuilder("part,count,material,mass of one (g),teeth,module (mm),sha-256\r\n");

    Manifest() {}

    /**
     * Adds a part.
     *
     * @param part the part
     * @param stl its file
     */
    void add(MovementPart part, byte[] stl) {
        BigDecimal grams = BigDecimal.valueOf(part.mass() * GRAMS).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        text.append(String.join(
                        ",",
                        part.name(),
                        Integer.toString(part.count()),
                        quoted(part.material()),
                        grams.toPlainString(),
                        part.teeth().stream()
                                .map(t -> Integer.toString(t.count()))
                                .collect(Collectors.joining(" ")),
                        part.teeth().stream().map(t -> t.module().toString()).collect(Collectors.joining(" ")),
                        hash(stl)))
                .append("\r\n");
    }

    private static String quoted(String text) {
        return '"' + text.replace("\"", "\"\"") + '"';
    }

    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException absent) {
            throw new IllegalStateException("Every Java platform has SHA-256.", absent);
        }
    }

    /** The whole list. */
    String text() {
        return text.toString();
    }
}
