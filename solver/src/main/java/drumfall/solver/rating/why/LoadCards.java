// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Brief.ArborKind;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.parts.DialForm;
import drumfall.solver.parts.HandSize;
import drumfall.solver.parts.Shrouds;
import drumfall.solver.parts.SquareSize;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.rating.ArborLoads;
import drumfall.solver.rating.AxialSizes;
import drumfall.solver.rating.TrainRater;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/** Cards of what an arbor's supports carry besides wheel and pinion or drum, whatever the friction. */
final class LoadCards {
    private static final double METRES = 1e-9;
    private static final double GRAVITY = Pendulum.STANDARD_GRAVITY;
    private static final String STEEL = "Beckett, 8th ed. 1903, p. 53";

    private final CardShelf shelf;
    private final Brief brief;
    private final ArborLoads loads;
    private final AxialSizes axial;
    private final MassInputs inputs;
    private final ArborRole role;
    private final String word;
    private final Brief.ArborBuild build;

    LoadCards(CardShelf shelf, TrainRater rater, ArborRole role) {
        this.shelf = shelf;
        this.brief = rater.brief();
        this.loads = rater.loads();
        this.axial = new AxialSizes(brief);
        this.inputs = new MassInputs(shelf, rater);
        this.role = role;
        this.word = role.name().toLowerCase(Locale.ROOT);
        this.build = rater.build(role);
    }

    private Card once(String name, Supplier<Card> maker) {
        return shelf.cards().containsKey(name) ? shelf.get(name) : maker.get();
    }

    private Card diameter() {
        return shelf.brief("d", "/arbors/" + word + "/diameter", build.diameter());
    }

    private Card gravity() {
        return PendulumCards.gravity(shelf);
    }

    private Card steel() {
        return shelf.given("steel-density", "ρ_s", Shrouds.STEEL, "kg/m3", STEEL);
    }

    private Card depth() {
        return shelf.brief("l_f", "/frame/depth", brief.frame().depth());
    }

    private Card plate() {
        return shelf.brief("b_p", "/frame/plate", brief.frame().plate());
    }

    private Card gap() {
        return shelf.brief("gap", "/parts/axialGap", brief.parts().axialGap());
    }

    private Card shake() {
        return shelf.brief("shake", "/fit/endShake/high", brief.fit().endShake().high());
    }

    private Card wall() {
        return shelf.brief("w_h", "/parts/hubWall", brief.parts().hubWall());
    }

    private Card layer() {
        return shelf.brief("h_l", "/printer/layer", brief.printer().layer());
    }

    /** Weight of the rod between its supports; none if it stands still. */
    Card rod() {
        if (build.kind() != ArborKind.TURNING) {
            return shelf.given("no-rod", "w_r", 0, "N", "a fixed rod bears its own weight");
        }
        double radius = build.diameter().si() / 2;
        return once(
                "rod-weight-" + word,
                () -> shelf.figure(
                        "rod-weight-" + word,
                        "w_r",
                        Shrouds.STEEL * Math.PI * radius * radius * loads.rodLength(role) * GRAVITY,
                        "N",
                        "w_r = ρ_s π d²/4 l g",
                        in -> in[0] * Math.PI * in[1] * in[1] / 4 * in[2] * in[3],
                        "steel 0.28 lb per cubic inch: " + STEEL,
                        steel(),
                        diameter(),
                        rodLength(),
                        gravity()));
    }

    private Card rodLength() {
        String formula = switch (role) {
            case CENTRE -> "l = l_f + 3/2 b_p, as far as the middle of the front plate";
            case DRUM -> "l = l_f + 2 b_p + l_m + 17 mm, through the winding square";
            case INTERMEDIATE, ESCAPE -> "l = l_f + 2 b_p";
        };
        double plates = role == ArborRole.CENTRE ? 1.5 : 2;
        double square = SquareSize.CUSTOMARY.collar() + SquareSize.CUSTOMARY.length();
        Card[] sizes =
                role == ArborRole.DRUM ? new Card[] {depth(), plate(), motionRoom()} : new Card[] {depth(), plate()};
        return once(
                "rod-length-" + word,
                () -> shelf.figure(
                        "rod-length-" + word,
                        "l",
                        loads.rodLength(role),
                        "m",
                        formula,
                        in -> in[0] + plates * in[1] + (in.length > 2 ? in[2] + square : 0),
                        "as deep as the frame allows",
                        sizes));
    }

    /** From the middle of the front plate to the end of the centre arbor's rod. */
    private Card rodEnd() {
        return once(
                "rod-end-length",
                () -> shelf.figure(
                        "rod-end-length",
                        "l_e",
                        loads.beforeSupport(),
                        "m",
                        "l_e = b_p/2 + l_m + l_h + gap + 10.8 mm: the hour wheel's pipe, both hands, the clutch's fingers;"
                                + " l_h = 2 gap + shake + 21.8 mm in whole layers, so that hands pass before the winding square",
                        in -> METRES * (Nanometres.of(in[0]) / 2.0) + in[1] + beyond(in),
                        "customary hands; common practice, no source",
                        plate(),
                        motionRoom(),
                        gap(),
                        shake(),
                        layer()));
    }

    private static double beyond(double... in) {
        double gap = METRES * Nanometres.of(in[2]);
        return HandSize.CUSTOMARY.beyond(SquareSize.CUSTOMARY, gap, gap + METRES * Nanometres.of(in[3]), in[4]);
    }

    private Card motionRoom() {
        if (!brief.hands().motionWork()) {
            return shelf.given("no-motion-work", "l_m", 0, "m", "the brief asks for no motion work");
        }
        return once(
                "motion-room",
                () -> shelf.figure(
                        "motion-room",
                        "l_m",
                        METRES
                                * motionRoom(
                                        axial.wheel(),
                                        axial.gaps().axial(),
                                        axial.gaps().endShake()),
                        "m",
                        "l_m = 2 b + 3 gap + 2 shake",
                        in -> METRES * motionRoom(Nanometres.of(in[0]), Nanometres.of(in[1]), Nanometres.of(in[2])),
                        "two planes before the front plate, as the layout takes them",
                        inputs.thickness(),
                        gap(),
                        shake()));
    }

    private static long motionRoom(long wheel, long gap, long shake) {
        return 2 * wheel + 3 * gap + 2 * shake;
    }

    /** Weight of spacers as long as they can get. */
    Card spacers() {
        return once(
                "spacer-weight-" + word,
                () -> shelf.figure(
                        "spacer-weight-" + word,
                        "w_s",
                        loads.spacers(role) * GRAVITY,
                        "N",
                        "w_s = ρ π ((d + 2 w_h)² − d²)/4 l_s g",
                        in -> in[0]
                                * Math.PI
                                * ((in[1] + 2 * in[2]) * (in[1] + 2 * in[2]) - in[1] * in[1])
                                / 4
                                * in[3]
                                * in[4],
                        "never less than is made: how long they are is known once planes have their order",
                        inputs.density(),
                        diameter(),
                        wall(),
                        spacerLength(),
                        gravity()));
    }

    private Card spacerLength() {
        boolean drum = role == ArborRole.DRUM;
        List<Card> stands = new ArrayList<>(List.of(depth(), layer(), inputs.thickness()));
        if (drum) {
            stands.add(shelf.get("ratchet-room"));
            stands.add(shelf.brief("l_d", "/drum/length", brief.drum().length()));
            stands.add(shelf.brief("w_d", "/drum/wall", brief.drum().wall()));
        } else {
            stands.add(inputs.leaves());
        }
        return shelf.figure(
                "spacer-length-" + word,
                "l_s",
                loads.spacerLength(role),
                "m",
                "l_s = max(0, l_f − b − " + (drum ? "l_r − l_d − 2 w_d" : "l_p") + ") + h_l",
                in -> Math.max(0, in[0] - in[2] - in[3] - (drum ? in[4] + 2 * in[5] : 0)) + in[1],
                "all that a movement as deep as the frame leaves, and a layer for rounding; our own bound",
                stands.toArray(Card[]::new));
    }

    /** Weight of what the bores take off wheel and pinion. */
    Card bores() {
        boolean drum = role == ArborRole.DRUM;
        boolean lantern = axial.lantern();
        List<Card> sizes = new ArrayList<>(List.of(inputs.density(), diameter(), gravity(), inputs.thickness()));
        if (!drum && !lantern) {
            sizes.add(inputs.leaves());
        }
        String length = drum ? "b" : lantern ? "(b + 2 (b/2))" : "(b + l_p)";
        return once(
                "bore-weight-" + word,
                () -> shelf.figure(
                        "bore-weight-" + word,
                        "w_b",
                        loads.bores(role) * GRAVITY,
                        "N",
                        "w_b = ρ π d²/4 g " + length,
                        in -> in[0] * Math.PI * in[1] * in[1] / 4 * in[2] * (in[3] + beyondWheel(drum, lantern, in)),
                        "wheels and pinions are weighed without their bores, which hang on the arbor",
                        sizes.toArray(Card[]::new)));
    }

    private static double beyondWheel(boolean drum, boolean lantern, double... in) {
        if (drum) {
            return 0;
        }
        return lantern ? METRES * (Nanometres.of(in[3]) / 2 * 2) : in[4];
    }

    /** Mass of what the centre arbor carries before the front plate. */
    Card dialMass() {
        return loads.dial()
                .map(form -> once("dial-mass", () -> dial("dial-mass", "m_h", form.mass(), form)))
                .orElseGet(() -> shelf.given("no-dial-mass", "m_h", 0, "kg", "no motion work is made"));
    }

    /** How far its middle is before the middle of the front plate. */
    private Card overhang() {
        return loads.dial()
                .map(form -> once(
                        "dial-overhang",
                        () -> shelf.figure(
                                "dial-overhang",
                                "a_h",
                                loads.dialOverhang(),
                                "m",
                                "a_h = b_p/2 + gap + shake + x_h",
                                in -> in[0] / 2 + in[1] + in[2] + in[3],
                                "the motion work's planes, as the layout takes them",
                                plate(),
                                gap(),
                                shake(),
                                dial("dial-middle", "x_h", form.middle(), form))))
                .orElseGet(() -> shelf.given("no-dial-overhang", "a_h", 0, "m", "no motion work is made"));
    }

    private Card dial(String name, String symbol, double value, DialForm form) {
        boolean mass = name.equals("dial-mass");
        String drawn = "the drawn teeth, thinned";
        return shelf.figure(
                name,
                symbol,
                value,
                mass ? "kg" : "m",
                mass
                        ? "m_h = ρ ∑ A h: cannon pinion with pipe and fingers, hour wheel with pipe and spacer, both hands"
                        : "x_h = ∑ A h x / ∑ A h, from the rear of the cannon pinion",
                in -> mass ? form(in).mass() : form(in).middle(),
                "parts as they are made in customary sizes; common practice, no source",
                shelf.brief(
                        "d", "/arbors/centre/diameter", brief.arbors().centre().diameter()),
                wall(),
                inputs.thickness(),
                gap(),
                shake(),
                layer(),
                inputs.nozzle(),
                shelf.given("cannon-area", "A_c", form.cannon(), "m²", drawn),
                shelf.given("hour-area", "A_s", form.hour(), "m²", drawn),
                inputs.density());
    }

    private static DialForm form(double... in) {
        double gap = METRES * Nanometres.of(in[3]);
        double spacing = METRES * (Nanometres.of(in[3]) + Nanometres.of(in[4]));
        return new DialForm(
                HandSize.CUSTOMARY,
                SquareSize.CUSTOMARY,
                in[0],
                in[1],
                in[2],
                gap,
                spacing,
                in[5],
                in[6],
                in[7],
                in[8],
                in[9]);
    }

    /** The torque that all of it takes before the front plate of the centre arbor. */
    Card dialTorque(String name, double value, Card front, Card rear) {
        return shelf.figure(
                name,
                "M_d",
                value,
                "N m",
                "M_d = g (m_h (s_front (1 + a_h/l) + s_rear a_h/l) + m_e (s_front (1 + a_e/l) + s_rear a_e/l)),"
                        + " a_e = l_e/2, m_e = ρ_s π d²/4 l_e",
                in -> in[0]
                        * (in[1] * slope(in[2] / in[7], in)
                                + in[5] * Math.PI * in[6] * in[6] / 4 * in[8] * slope(in[8] / 2 / in[7], in)),
                "moment balance on two supports, as near to each other as any movement has them; textbook statics",
                gravity(),
                dialMass(),
                overhang(),
                front,
                rear,
                steel(),
                diameter(),
                span(),
                rodEnd());
    }

    private static double slope(double share, double... in) {
        return in[3] * (1 + share) + in[4] * share;
    }

    /** The least from the middle of one plate to that of the other. */
    private Card span() {
        return once(
                "least-span",
                () -> shelf.figure(
                        "least-span",
                        "l",
                        loads.leastSpan(),
                        "m",
                        "l = b_p + 2 gap + shake + max(2 l_1 + gap + shake, l_1 + click space + l_d + 2 w_d)",
                        in -> in[0]
                                + 2 * in[1]
                                + in[2]
                                + Math.max(2 * in[3] + in[1] + in[2], in[3] + in[4] + in[5] + 2 * in[6]),
                        "two planes of meshes, or great wheel and drum; our own bound",
                        plate(),
                        gap(),
                        shake(),
                        shelf.get("mesh-plane"),
                        shelf.brief(
                                "click space", "/drum/clickSpace", brief.drum().clickSpace()),
                        shelf.brief("l_d", "/drum/length", brief.drum().length()),
                        shelf.brief("w_d", "/drum/wall", brief.drum().wall())));
    }
}
