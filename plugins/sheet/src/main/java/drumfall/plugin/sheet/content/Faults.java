// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet.content;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.ArborFriction;
import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Movement;
import drumfall.solver.power.WeightWalk;
import drumfall.solver.power.answers.FreeSpin;
import drumfall.solver.power.books.LoadedArbor;
import drumfall.solver.power.books.LoadedClock;
import drumfall.solver.power.escape.DeadbeatForm;
import drumfall.solver.rating.BandPoint;
import drumfall.solver.rating.answers.PowerAnswers;
import drumfall.solver.train.Reeving;
import java.util.ArrayList;
import java.util.List;

/** Weighs the clock anew with one thing wrong at a time. */
final class Faults {
    /** How much harder a tight bore grips; a plain doubling, so that other grips can be judged from it. */
    static final double TIGHT = 2;

    /** Share of the pulley's efficiency that is left when it is stiff. */
    static final double STIFF = 0.9;

    /** How much deeper the pallets stand, rad. */
    static final double DEEPER = Math.toRadians(0.5);

    private final Clock clock;
    private final LoadedClock loaded;

    Faults(Clock clock) {
        this.clock = clock;
        this.loaded = clock.loaded();
    }

    List<Fault> all() {
        List<Fault> faults = new ArrayList<>();
        for (int arbor = 0; arbor < clock.arbors(); arbor++) {
            faults.add(tight(arbor));
        }
        DepthFaults depths = new DepthFaults(clock);
        for (int mesh = 0; mesh < clock.train().meshes().size(); mesh++) {
            faults.add(depths.wide(mesh));
            faults.add(depths.close(mesh));
        }
        faults.add(deepLock());
        faults.add(rough(
                "Pendulum loses more: Q " + quality(),
                "the swing dies too soon with the crutch off",
                new BandPoint(0.5, 0.5, 0.5, 1)));
        faults.add(rough(
                "Pallets or escape wheel rough or dry",
                "scratches on the pallets' faces",
                new BandPoint(0.5, 0.5, 1, 0.5)));
        faults.add(rough("Teeth rough throughout", "strings or blobs on the flanks", new BandPoint(1, 0.5, 0.5, 0.5)));
        faults.add(hands());
        if (clock.train().reeving() == Reeving.DOUBLE) {
            faults.add(stiffPulley());
        }
        return faults;
    }

    /** An arbor whose supports rub twice as hard. */
    Fault tight(int arbor) {
        LoadedArbor running = gripped(loaded.running().arbors().get(arbor));
        LoadedArbor starting = gripped(loaded.starting().arbors().get(arbor));
        String what = Bores.plain(clock.build(arbor)) ? "bore tight" : "bearing dirty or greased";
        String sign = clock.answers().map(answers -> spin(answers, arbor)).orElse("spins half as long");
        return new Fault(
                clock.name(arbor) + ": " + what,
                sign,
                loaded.withArbor(arbor, running, starting).leastWeight());
    }

    private static String spin(PowerAnswers answers, int arbor) {
        FreeSpin free = answers.freeSpins().get(arbor);
        return "spins " + Words.seconds(free.seconds() / TIGHT) + " instead of " + Words.seconds(free.seconds());
    }

    private LoadedArbor gripped(LoadedArbor arbor) {
        ArborFriction f = arbor.friction();
        double hands = arbor.role() == ArborRole.CENTRE ? loaded.hands() : 0;
        double standing = TIGHT * (f.standing() - hands) + hands;
        return arbor.withFriction(
                new ArborFriction(TIGHT * f.wheelSlope(), TIGHT * f.pinionSlope(), standing, f.gravity()));
    }

    private Fault deepLock() {
        Movement m = loaded.movement();
        DeadbeatForm form = m.escapement();
        DeadbeatForm deep = new DeadbeatForm(
                form.wheelRadius(),
                form.spanLimit(),
                form.lift(),
                form.lock() + DEEPER,
                form.drop(),
                form.friction(),
                form.palletArborTorque(),
                form.inertiaShare());
        return new Fault(
                "Pallets lock " + Words.number(Math.toDegrees(DEEPER), 1) + "\u00b0 too deep",
                "the wheel lands far up the dead face",
                loaded.withMovement(changed(m, deep, m.pulleyEfficiency())).leastWeight());
    }

    private Fault stiffPulley() {
        Movement m = loaded.movement();
        double stiff = STIFF * m.pulleyEfficiency();
        return new Fault(
                "Pulley stiff: efficiency " + Words.number(stiff, 2) + " instead of "
                        + Words.number(m.pulleyEfficiency(), 2),
                "the weight hangs askew",
                loaded.withMovement(changed(m, m.escapement(), stiff)).leastWeight());
    }

    private static Movement changed(Movement m, DeadbeatForm form, double pulley) {
        return new Movement(
                m.parts(),
                m.teeth(),
                m.pendulum(),
                form,
                m.reserveArc(),
                m.running(),
                m.starting(),
                m.bindingReserve(),
                pulley);
    }

    /** One band at its rough end, the others in the middle. */
    private Fault rough(String what, String sign, BandPoint point) {
        WeightWalk walk = new WeightWalk(clock.rater().movement(point));
        return new Fault(what, sign, walk.weigh(clock.train()).leastWeight());
    }

    private String quality() {
        Brief.QualityBand band = clock.brief().pendulum().quality();
        return Words.number(band.low().si(), 0) + " instead of "
                + Words.number(loaded.movement().pendulum().quality(), 0);
    }

    private Fault hands() {
        int centre = clock.train().meshesAbove();
        LoadedArbor running = rubbing(loaded.running().arbors().get(centre));
        LoadedArbor starting = rubbing(loaded.starting().arbors().get(centre));
        return new Fault(
                "Hands or motion work rub twice as hard",
                "stops at the same place of the dial",
                loaded.withArbor(centre, running, starting).leastWeight());
    }

    private LoadedArbor rubbing(LoadedArbor arbor) {
        ArborFriction f = arbor.friction();
        return arbor.withFriction(
                new ArborFriction(f.wheelSlope(), f.pinionSlope(), f.standing() + loaded.hands(), f.gravity()));
    }
}
