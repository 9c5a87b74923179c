// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.power.pendulum.PendulumKind;
import drumfall.solver.power.pendulum.RingDownFit;
import drumfall.solver.quantity.Quantity;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;

/** How well the pendulum keeps its swing: known, expected of its kind, or read from a ring-down. */
final class QualityChoice {
    @Option(names = "--quality", paramLabel = "Q", converter = Given.Quality.class, descriptionKey = "option.quality")
    private Quantity quality;

    @Option(names = "--kind", paramLabel = "KIND", converter = KindReader.class, descriptionKey = "option.kind")
    private PendulumKind kind;

    @Option(names = "--ring-down", paramLabel = "FILE.csv", descriptionKey = "option.ring-down")
    private String ringDown;

    /** The quality asked for; empty if none is given. */
    Optional<PendulumAnswer.Quality> quality() {
        if (Stream.of(quality, kind, ringDown).filter(given -> given != null).count() > 1) {
            throw RefusedInput.of("qualities");
        }
        if (quality != null) {
            return Optional.of(new PendulumAnswer.Quality(quality.si(), quality.si(), Optional.empty()));
        }
        if (kind != null) {
            return Optional.of(new PendulumAnswer.Quality(kind.lowest(), kind.highest(), Optional.empty()));
        }
        return Optional.ofNullable(ringDown).map(RingDownFile::fit).map(fit -> measured(fit, ringDown));
    }

    private static PendulumAnswer.Quality measured(RingDownFit fit, String file) {
        double measured = fit.quality().orElseThrow(() -> RefusedInput.of("ring-down.straight", file));
        if (measured < 1) {
            throw RefusedInput.of("ring-down.fast", file);
        }
        return new PendulumAnswer.Quality(measured, measured, Optional.of(fit));
    }

    /** Reads a kind of pendulum. */
    static final class KindReader implements ITypeConverter<PendulumKind> {
        @Override
        public PendulumKind convert(String text) {
            return KindWord.of(text, PendulumKind.values());
        }
    }
}
