// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.teeth.choice.ToothFamily;
import drumfall.solver.teeth.contact.ContactBand;
import drumfall.solver.teeth.contact.ContactPath;
import drumfall.solver.teeth.contact.MeshConditions;
import drumfall.solver.teeth.contact.MeshContact;
import drumfall.solver.teeth.contact.MeshTracer;
import drumfall.solver.teeth.contact.PathCache;
import drumfall.solver.teeth.contact.Sampling;
import drumfall.solver.teeth.form.InvoluteGear;
import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.teeth.form.ToothForm;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * One mesh as the solver traces it; lengths in metres.
 *
 * @param wish what was asked
 * @param teeth the teeth chosen
 * @param drawn their contact as drawn, thinned by the middle of the band
 * @param band their contact over the band of errors, at the greatest friction
 */
record MeshFigures(MeshWish wish, MeshTeeth teeth, ContactPath drawn, ContactBand band) {
    /** Corners of the band of errors. */
    private static final int CORNERS = 4;

    static MeshFigures of(MeshWish wish) {
        MeshTeeth teeth = MeshBounds.teeth(wish);
        double module = wish.module().metres();
        double thinning = wish.thinning().middle() / module;
        ContactBand.Errors errors = new ContactBand.Errors(
                -wish.centreError().si() / module,
                wish.centreError().si() / module,
                wish.thinning().low().si() / module,
                wish.thinning().high().si() / module);
        return new MeshFigures(
                wish,
                teeth,
                MeshTracer.trace(teeth.pair(), new MeshConditions(0, thinning, thinning), Sampling.EXACT),
                ContactBand.of(
                        teeth.pair(), errors, wish.friction().high().si(), Sampling.EXACT, new PathCache(CORNERS)));
    }

    ToothForm wheel() {
        return teeth.pair().driver();
    }

    ToothForm pinion() {
        return teeth.pair().follower();
    }

    double metres(double modules) {
        return modules * wish.module().metres();
    }

    double centreDistance() {
        return metres(teeth.pair().centreDistance());
    }

    /** Nominal; the shifts of a chosen pair cancel, so it is the working angle too. */
    OptionalDouble pressureAngle() {
        return wheel() instanceof InvoluteGear gear
                ? OptionalDouble.of(gear.rack().pressureAngle())
                : OptionalDouble.empty();
    }

    static OptionalDouble shift(ToothForm form) {
        return form instanceof InvoluteGear gear ? OptionalDouble.of(gear.shift()) : OptionalDouble.empty();
    }

    double tipRadius(ToothForm form) {
        return metres(
                form == wheel() ? teeth.wheel().tipRadius() : teeth.pinion().tipRadius());
    }

    double addendum(ToothForm form) {
        return tipRadius(form) - metres(form.pitchRadius());
    }

    /** A lantern has no root circle. */
    OptionalDouble rootRadius(ToothForm form) {
        return form instanceof LanternPinion
                ? OptionalDouble.empty()
                : OptionalDouble.of(metres(form.flank().rootRadius()));
    }

    OptionalDouble baseRadius(ToothForm form) {
        return form instanceof InvoluteGear gear
                ? OptionalDouble.of(metres(gear.baseRadius()))
                : OptionalDouble.empty();
    }

    /** Along the pitch circle before thinning; the pin's diameter in a lantern. */
    double thickness(ToothForm form) {
        return metres(
                form instanceof LanternPinion pins
                        ? pins.pinDiameter()
                        : 2 * form.pitchRadius() * form.flank().halfAngle(form.pitchRadius()));
    }

    double formFactor(ToothForm form) {
        return form == wheel() ? teeth.wheel().formFactor() : teeth.pinion().formFactor();
    }

    /** The least, the middle and the most friction, each once. */
    double[] frictions() {
        return DoubleStream.of(
                        wish.friction().low().si(),
                        wish.friction().middle(),
                        wish.friction().high().si())
                .distinct()
                .toArray();
    }

    MeshContact at(double friction) {
        return drawn.withFriction(friction);
    }

    double worstOverBand(double friction) {
        return band.all().stream()
                .mapToDouble(contact -> contact.path().withFriction(friction).worstTorque())
                .min()
                .orElseThrow();
    }

    double approachShare() {
        return drawn.approachAngle() / (drawn.approachAngle() + drawn.recessAngle());
    }

    double leastBacklash() {
        return metres(band.leastBacklash());
    }

    double greatestBacklash() {
        return metres(band.all().stream()
                .mapToDouble(contact -> contact.path().clearances().greatestBacklash())
                .max()
                .orElseThrow());
    }

    double drawnBacklash() {
        return metres(drawn.clearances().leastBacklash());
    }

    double printableSection() {
        double module = wish.module().metres();
        return metres(teeth.printableSection(
                wish.nozzle().si() / module, wish.thinning().high().si() / module));
    }

    /** Two passes of the nozzle, as the choice of teeth asks for. */
    double thinnestSection() {
        return 2 * wish.nozzle().si();
    }

    boolean involute() {
        return wish.family() == ToothFamily.INVOLUTE;
    }
}
