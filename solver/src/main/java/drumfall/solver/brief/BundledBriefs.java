// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.sheet.SheetProblem;
import drumfall.solver.sheet.SheetResult;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The briefs that come with the program, clocks of one invented maker.
 *
 * <p>Where their figures come from, since JSON has no room for remarks: coefficients of friction, the static factor, the
 * quality factors of the pendulums, bearing friction and drag, the share of the impulse spent on the wheel's inertia, the
 * pallet arbor's torque, the torque of the hands, pulley efficiency and the density of the filament are modest values from
 * memory, to be replaced by the maker's own measurements. Spacing of the line's turns from 1.05 to 1.1 is common practice,
 * no source. Sizes, durations and tooth counts are the scenario's own.
 */
public final class BundledBriefs {
    /** The demonstration: a weekly wall clock with a quarter-metre pendulum. */
    public static final String WEEKLY_WALL_CLOCK = "weekly-wall-clock";

    /** A month-runner with a seconds pendulum and a seconds hand. */
    public static final String MONTH_RUNNER = "month-runner";

    /** A 30-hour desk clock with a short fall. */
    public static final String DESK_CLOCK = "desk-clock";

    private static final List<String> NAMES = List.of(WEEKLY_WALL_CLOCK, MONTH_RUNNER, DESK_CLOCK);

    private BundledBriefs() {}

    /** The names of all bundled briefs, the demonstration first. */
    public static List<String> names() {
        return NAMES;
    }

    /**
     * The text of a bundled brief as it is kept.
     *
     * @param name one of {@link #names()}; others give an empty answer
     */
    public static Optional<String> text(String name) {
        return Optional.of(name).filter(NAMES::contains).map(BundledBriefs::resource);
    }

    /**
     * A bundled brief.
     *
     * @param name one of {@link #names()}; others give an empty answer
     */
    public static Optional<Brief> load(String name) {
        return text(name).map(BriefReader::read).map(BundledBriefs::inOrder);
    }

    /** The demonstration brief, {@link #WEEKLY_WALL_CLOCK}. */
    public static Brief demo() {
        return load(WEEKLY_WALL_CLOCK).orElseThrow();
    }

    private static Brief inOrder(SheetResult<Brief> result) {
        return result.accepted()
                .orElseThrow(() -> new IllegalStateException(result.problems().stream()
                        .map(SheetProblem::sentence)
                        .collect(Collectors.joining(" ", "A bundled brief is not in order. ", ""))));
    }

    private static String resource(String name) {
        try (InputStream stream = BundledBriefs.class.getResourceAsStream(name + ".json")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException("The bundled brief (%s) cannot be read.".formatted(name), fault);
        }
    }
}
