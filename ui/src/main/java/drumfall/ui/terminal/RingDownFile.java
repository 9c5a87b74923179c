// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.power.pendulum.RingDown;
import drumfall.solver.power.pendulum.RingDown.Reading;
import drumfall.solver.power.pendulum.RingDownFit;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormatException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads arcs of a ring-down: on each line the periods, a comma, the semi-arc with its unit; # begins a remark. */
final class RingDownFile {
    private static final long MOST_BYTES = 1_000_000;

    private RingDownFile() {}

    static RingDownFit fit(String file) {
        List<String> lines = lines(file);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (!line.isEmpty() && !line.startsWith("#")) {
                readings.add(reading(file, i + 1, line));
            }
        }
        try {
            return new RingDown(readings).fit();
        } catch (IllegalArgumentException refused) {
            throw new RefusedInput(List.of(Phrases.phrase("problem", file, refused.getMessage())));
        }
    }

    private static List<String> lines(String file) {
        Path path = SheetTexts.path(file);
        try {
            if (!Files.isRegularFile(path) || Files.size(path) > MOST_BYTES) {
                throw RefusedInput.of("ring-down.file", file);
            }
            return Files.readAllLines(path);
        } catch (IOException unreadable) {
            throw RefusedInput.of("ring-down.file", file);
        }
    }

    private static Reading reading(String file, int number, String line) {
        String[] cells = line.split(",", -1);
        if (cells.length != 2) {
            throw RefusedInput.of("ring-down.line", file, number, line);
        }
        try {
            double periods = Quantity.parse(Dimension.NUMBER, cells[0].strip()).si();
            double arc = Quantity.parse(Dimension.ANGLE, cells[1].strip()).si();
            return new Reading(periods, arc);
        } catch (QuantityFormatException unreadable) {
            throw RefusedInput.of("ring-down.cell", file, number, unreadable.getMessage());
        } catch (IllegalArgumentException impossible) {
            throw RefusedInput.of("ring-down.arc", file, number, cells[1].strip());
        }
    }
}
