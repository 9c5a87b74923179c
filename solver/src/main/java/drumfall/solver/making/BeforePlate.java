// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The printed parts before the front plate, as they stand: motion work, winding square and hands.
 *
 * @param levels the parts, those that begin nearest to the plate first
 */
public record BeforePlate(List<Level> levels) {
    /** Sums of decimal sizes miss each other in the last digits; a nanometre is nothing to a printer. */
    private static final double HAIR = 1e-9;

    private static final double METRES = 1e-3;

    /** Copies the list. */
    public BeforePlate {
        levels = List.copyOf(levels);
    }

    /**
     * What a part takes before the front plate.
     *
     * @param part its name
     * @param from where it begins, m before the plate's front face
     * @param body where what it has on the bed, such as the wheel under a pipe, ends
     * @param to where it ends
     */
    public record Level(String part, double from, double body, double to) {}

    /**
     * What stands before the plate.
     *
     * @param parts the movement's parts
     * @param face the front face of the front plate, m before the back plate's inner face
     */
    public static BeforePlate of(List<MovementPart> parts, double face) {
        List<Level> levels = new ArrayList<>();
        for (MovementPart part : parts) {
            for (Mount.Stance stance : part.mount().stances()) {
                double from = part.mount().rear(stance, part.height()) - face;
                if (from >= -HAIR) {
                    double body = METRES * part.solid().slabs().get(0).height();
                    levels.add(new Level(part.name(), from, from + body, from + part.height()));
                }
            }
        }
        levels.sort(Comparator.comparingDouble(Level::from));
        return new BeforePlate(levels);
    }

    /** The room that all of it takes before the front plate, m; 0 if nothing stands there. */
    public double room() {
        return levels.stream().mapToDouble(Level::to).max().orElse(0);
    }

    /**
     * The room that a dial has between hour wheel and hour hand; empty without motion work.
     */
    public Optional<DialRoom> dial() {
        return level("hour-wheel")
                .flatMap(wheel -> level("hour-hand").map(hand -> new DialRoom(wheel.body(), hand.from())));
    }

    private Optional<Level> level(String part) {
        return levels.stream().filter(level -> level.part().equals(part)).findFirst();
    }

    /**
     * Room for a dial, m before the front plate.
     *
     * @param from where it begins
     * @param to where it ends
     */
    public record DialRoom(double from, double to) {}
}
