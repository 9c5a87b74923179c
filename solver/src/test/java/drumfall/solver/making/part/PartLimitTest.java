// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import drumfall.solver.making.solid.SizeLimitException;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each limit with a size that keeps it and one that breaks it; two extrusion widths of 0.4 mm are common practice. */
class PartLimitTest {
    private static final PrintSizes PRINT = new PrintSizes(0.4e-3, 0.2e-3, 0.15e-3);

    @FunctionalInterface
    private interface Made {
        void with(double metres);
    }

    private static final GearCut WHEEL = Teeth.cut(60, 8, true);
    private static final GearCut LEAVES = Teeth.cut(60, 8, false);

    private static Made made(String size) {
        return switch (size) {
            case "spacer height" -> v -> new Spacer(3e-3, 8e-3, v, PRINT);
            case "spacer outer" -> v -> new Spacer(3e-3, v, 4e-3, PRINT);
            case "wheel bore" -> v -> new WheelPart(WHEEL, Crossings.NONE, 6e-3, v, PinCircle.NONE, PRINT);
            case "wheel rim" -> v -> wheel(new Crossings(12e-3, v, 5, 3e-3, 2e-3));
            case "wheel arm" -> v -> wheel(new Crossings(12e-3, 3e-3, 5, v, 2e-3));
            case "wheel hub" -> v -> wheel(new Crossings(v, 3e-3, 5, 1e-3, 2e-3));
            case "pinion bore" -> v -> new PinionPart(LEAVES, 10e-3, v, PRINT);
            case "drum wall" -> v -> drum(v, 32e-3);
            case "drum flange" -> v -> drum(4e-3, v);
            case "ratchet depth" -> v -> new Ratchet(24, 20e-3, v, 5e-3, 0, 6e-3, PinCircle.NONE, true, PRINT);
            case "ratchet pins" ->
                v -> new Ratchet(24, 20e-3, 2.5e-3, 5e-3, 0, 6e-3, new PinCircle(3, v, 3e-3), true, PRINT);
            case "click nose" -> v -> new Click(20e-3, 8e-3, v, 3e-3, 5e-3, PRINT);
            case "square side" -> v -> new WindingSquare(v, 12e-3, 3e-3, 6e-3, PRINT);
            case "key width" -> v -> new WindingKey(8e-3, 12e-3, 80e-3, v, 5e-3, PRINT);
            case "cannon grip" ->
                v -> new CannonPinion(Teeth.cut(36, 12, false), 6e-3, 4e-3, 6e-3, 12e-3, 6e-3, v, 0.5e-3, PRINT);
            case "hand tip" -> v -> new Hand(80e-3, 10e-3, v, 6e-3, 2.4e-3, 2.4e-3, PRINT);
            case "pulley groove" -> v -> new Pulley(20e-3, v, 1.5e-3, 1.6e-3, 10e-3, PRINT);
            case "shell diameter" -> v -> new WeightShell(v, 80e-3, 2.4e-3, 6e-3, PRINT);
            case "bob thickness" -> v -> new BobShell(100e-3, v, 6e-3, 1.6e-3, PRINT);
            case "nut diameter" -> v -> new RatingNut(v, 6e-3, 8e-3, 12, PRINT);
            case "head width" -> v -> new RodHead(v, 40e-3, 6e-3, 6e-3, 10e-3, 3e-3, PRINT);
            case "plate hole" ->
                v -> new Plate("plate", 0.1, 0.2, 6e-3, List.of(PlateHole.plain("arbor 1", v, 0, 6e-3)), PRINT);
            case "plate seat" ->
                v -> new Plate("plate", 0.1, 0.2, 6e-3, List.of(new PlateHole("arbor 1", 0, 0, 6e-3, 10e-3, v)), PRINT);
            case "tooth tip" ->
                v -> new EscapeWheel(
                        new EscapeWheel.Tooth(30, 30e-3, 6e-3, v, 0.17, 2.5e-3),
                        Crossings.NONE,
                        6e-3,
                        3e-3,
                        true,
                        PRINT);
            case "tail head" -> v -> new Joint(8e-3, 8e-3, v, 60e-3);
            default -> throw new IllegalArgumentException(size);
        };
    }

    private static void wheel(Crossings crossings) {
        new WheelPart(WHEEL, crossings, 6e-3, 3e-3, PinCircle.NONE, PRINT).section();
    }

    private static void drum(double wall, double flange) {
        new Drum(52e-3, 45e-3, wall, flange, 1.5e-3, 6e-3, PinCircle.NONE, PRINT);
    }

    @ParameterizedTest
    @CsvSource({
        // size, mm that work, mm that do not, nearest mm offered
        "spacer height, 0.2, 0.1, 0.2",
        "spacer outer, 4.6, 4.5, 4.6",
        "wheel rim, 0.8, 0.7, 0.8",
        "wheel arm, 0.8, 0.7, 0.8",
        "wheel hub, 4.6, 4.5, 4.6",
        "drum wall, 0.8, 0.7, 0.8",
        "drum flange, 28.75, 28.7, 28.75",
        "ratchet depth, 0.8, 0.7, 0.8",
        "ratchet pins, 5.3, 5.2, 5.3",
        "ratchet pins, 15, 15.1, 15",
        "click nose, 0.8, 0.7, 0.8",
        "click nose, 8, 8.1, 8",
        "square side, 7.6, 7.5, 7.6",
        "key width, 14.94, 14.9, 14.938",
        "cannon grip, 0.2, 0.3, 0.2",
        "hand tip, 0.8, 0.7, 0.8",
        "pulley groove, 1.5, 1.4, 1.5",
        "shell diameter, 17.8, 17.7, 17.8",
        "bob thickness, 4.75, 4.7, 4.75",
        "head width, 15.2, 15.1, 15.2",
        "plate hole, 46.2, 46.3, 46.2",
        "plate hole, -46.2, -46.3, 46.2",
        "plate seat, 5.6, 5.7, 5.6",
        "tooth tip, 0.4, 0.3, 0.4",
        "tail head, 8.2, 8.1, 8.2"
    })
    void a_size_beyond_its_limit_is_refused_with_the_nearest_that_works(
            String size, double good, double bad, double nearest) {
        Made made = made(size);
        assertThatCode(() -> made.with(good * 1e-3)).doesNotThrowAnyException();
        SizeLimitException refused = catchThrowableOfType(SizeLimitException.class, () -> made.with(bad * 1e-3));
        assertThat(refused).isNotNull();
        // The sentence shows thousandths of a millimetre, rounded to the side that works; the value offered is the
        // same.
        assertThat(refused.nearest() * 1e3).isBetween(nearest - 5e-3, nearest + 5e-3);
        assertThat(refused.getMessage())
                .matches("The .+ \\(.+ mm\\) must be at (least|most) .+ mm, .+\\. Maybe take .+ mm\\.");
        double offered = Math.copySign(refused.nearest(), bad);
        assertThatCode(() -> made.with(offered)).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @CsvSource({"wheel bore, 55, 57", "pinion bore, 3, 7"})
    void a_bore_that_reaches_the_roots_is_refused(String size, double good, double bad) {
        Made made = made(size);
        assertThatCode(() -> made.with(good * 1e-3)).doesNotThrowAnyException();
        assertThatThrownBy(() -> made.with(bad * 1e-3))
                .isInstanceOf(SizeLimitException.class)
                .hasMessageContaining("two extrusion widths short of the roots");
    }
}
