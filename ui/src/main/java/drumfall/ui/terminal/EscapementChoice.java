// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.power.escape.Deadbeat;
import drumfall.solver.power.escape.DeadbeatForm;
import drumfall.solver.power.escape.EscapementKind;
import drumfall.solver.quantity.Quantity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;

/** The escapement that keeps the pendulum, if one is asked about. */
final class EscapementChoice {
    /** With fewer, one and a half tooth spaces are half the wheel or more. */
    private static final int LEAST_TEETH = 4;

    @Option(
            names = "--escapement",
            paramLabel = "KIND",
            converter = KindReader.class,
            descriptionKey = "option.escapement")
    private EscapementKind kind;

    @Option(
            names = "--escape-teeth",
            paramLabel = "COUNT",
            converter = WholeNumber.class,
            descriptionKey = "option.escape-teeth")
    private Integer teeth;

    @Option(
            names = "--escape-radius",
            paramLabel = "LENGTH",
            converter = Given.Length.class,
            descriptionKey = "option.escape-radius")
    private Quantity radius;

    @Option(
            names = "--pallet-span",
            paramLabel = "ANGLE",
            converter = Given.Angle.class,
            descriptionKey = "option.pallet-span")
    private Quantity span;

    @Option(names = "--lift", paramLabel = "ANGLE", converter = Given.Angle.class, descriptionKey = "option.lift")
    private Quantity lift;

    @Option(names = "--lock", paramLabel = "ANGLE", converter = Given.AngleOrNone.class, descriptionKey = "option.lock")
    private Quantity lock;

    @Option(names = "--drop", paramLabel = "ANGLE", converter = Given.AngleOrNone.class, descriptionKey = "option.drop")
    private Quantity drop;

    @Option(
            names = "--pallet-friction",
            paramLabel = "NUMBER",
            converter = Given.Share.class,
            descriptionKey = "option.pallet-friction")
    private Quantity friction;

    @Option(
            names = "--pallet-torque",
            paramLabel = "TORQUE",
            converter = Given.Torque.class,
            descriptionKey = "option.pallet-torque")
    private Quantity arborTorque;

    @Option(
            names = "--inertia-share",
            paramLabel = "SHARE",
            converter = Given.Share.class,
            descriptionKey = "option.inertia-share")
    private Quantity inertiaShare;

    @Option(names = "--torque", paramLabel = "TORQUE", converter = Given.Torque.class, descriptionKey = "option.torque")
    private Quantity torque;

    Optional<Quantity> torque() {
        return Optional.ofNullable(torque);
    }

    /**
     * The escapement; empty if none is asked about.
     *
     * @param suspension Coulomb torque of the pendulum's own suspension, added to that of the pallet arbor, N m
     */
    Optional<Deadbeat> escapement(double suspension) {
        if (kind != null && !kind.modelled()) {
            throw RefusedInput.of("escapement", JsonOutput.word(kind), JsonOutput.word(EscapementKind.DEADBEAT));
        }
        if (!asked()) {
            return Optional.empty();
        }
        needed();
        if (teeth < LEAST_TEETH) {
            throw RefusedInput.of("escape-teeth", teeth, LEAST_TEETH);
        }
        Deadbeat escapement = new DeadbeatForm(
                        radius.si(),
                        span.si(),
                        lift.si(),
                        lock.si(),
                        drop.si(),
                        friction.si(),
                        orNone(arborTorque) + suspension,
                        share())
                .with(teeth);
        exists(escapement);
        return Optional.of(escapement);
    }

    boolean asked() {
        return kind != null
                || teeth != null
                || inertiaShare != null
                || arborTorque != null
                || torque != null
                || sizes().values().stream().anyMatch(Objects::nonNull);
    }

    private Map<String, Object> sizes() {
        Map<String, Object> sizes = new LinkedHashMap<>();
        sizes.put("--escape-teeth COUNT", teeth);
        sizes.put("--escape-radius LENGTH", radius);
        sizes.put("--pallet-span ANGLE", span);
        sizes.put("--lift ANGLE", lift);
        sizes.put("--lock ANGLE", lock);
        sizes.put("--drop ANGLE", drop);
        sizes.put("--pallet-friction NUMBER", friction);
        return sizes;
    }

    private void needed() {
        List<String> missing = sizes().entrySet().stream()
                .filter(size -> size.getValue() == null)
                .map(Map.Entry::getKey)
                .toList();
        if (!missing.isEmpty()) {
            throw RefusedInput.of("escapement.missing", String.join(", ", missing));
        }
    }

    private double share() {
        double share = orNone(inertiaShare);
        if (share >= 1) {
            throw RefusedInput.of("inertia-share", inertiaShare);
        }
        return share;
    }

    private static double orNone(Quantity given) {
        return given == null ? 0 : given.si();
    }

    private void exists(Deadbeat escapement) {
        if (escapement.workingTurn() <= 0) {
            throw RefusedInput.of("drop", drop, teeth, PendulumTexts.below(Math.PI / teeth));
        }
        if (escapement.wholeSpaces() < 1) {
            throw RefusedInput.of("pallet-span", span, teeth, PendulumTexts.above(3 * Math.PI / teeth));
        }
        if (!escapement.exists()) {
            throw RefusedInput.of("pallet-span.wide", span);
        }
    }

    /** Reads a kind of escapement. */
    static final class KindReader implements ITypeConverter<EscapementKind> {
        @Override
        public EscapementKind convert(String text) {
            return KindWord.of(text, EscapementKind.values());
        }
    }
}
