// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

import drumfall.solver.teeth.choice.CycloidalFreedom;
import drumfall.solver.teeth.choice.FormChooser;
import drumfall.solver.teeth.choice.InvoluteFreedom;
import drumfall.solver.teeth.choice.LanternFreedom;
import drumfall.solver.teeth.choice.MeshNeed;
import drumfall.solver.teeth.choice.Range;
import drumfall.solver.teeth.choice.ToothFamily;
import drumfall.solver.teeth.contact.ContactBand;
import drumfall.solver.teeth.contact.ContactPath;
import drumfall.solver.teeth.contact.PathCache;
import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.teeth.outline.ToothStrength;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds and measures the teeth of one pair of counts at one module; what was found is kept for the whole program. */
final class TeethFinder {
    /** Printed teeth must hand over before they let go, also at the widest centres; common practice, no source. */
    private static final double CONTACT_RATIO = 1.05;

    /** All pairs of ten briefs; one takes some twenty kilobytes. */
    private static final int KEPT = 4096;

    private static final Map<Question, Optional<MeshTeeth>> KNOWN =
            Collections.synchronizedMap(new LinkedHashMap<>(16, 0.75f, true) {
                @Override
                protected boolean removeEldestEntry(Map.Entry<Question, Optional<MeshTeeth>> eldest) {
                    return size() > KEPT;
                }
            });

    private final Question question;

    private TeethFinder(Question question) {
        this.question = question;
    }

    /** All that matters, in modules: the same question at another module is the same question. */
    private record Question(ToothFamily family, Optional<Double> pressureAngle, MeshNeed need) {}

    /**
     * The teeth, if any can be printed and run.
     *
     * @param needs what is asked of all meshes
     * @param toothCount teeth of the driving wheel
     * @param leafCount leaves of the pinion
     * @param module m
     */
    static Optional<MeshTeeth> find(ToothNeeds needs, int toothCount, int leafCount, double module) {
        ContactBand.Errors errors = new ContactBand.Errors(
                -needs.centreError() / module,
                needs.centreError() / module,
                needs.leastThinning() / module,
                needs.mostThinning() / module);
        double extrusion = needs.nozzle() / module;
        MeshNeed need =
                new MeshNeed(toothCount, leafCount, needs.friction(), errors, CONTACT_RATIO, extrusion, extrusion / 2);
        Question question = new Question(needs.family(), needs.pressureAngle(), need);
        Optional<MeshTeeth> known = KNOWN.get(question);
        if (known == null) {
            known = new TeethFinder(question).find();
            KNOWN.put(question, known);
        }
        return known;
    }

    private Optional<MeshTeeth> find() {
        FormChooser chooser = new FormChooser(
                involute(question.pressureAngle), CycloidalFreedom.FREE, LanternFreedom.FREE, new PathCache(8));
        return chooser.choose(question.need, question.family)
                .filter(chosen -> chosen.band().leastBacklash() >= 0)
                .map(chosen -> measure(chosen.pair(), chosen.band()));
    }

    /** Shifts that cancel keep the standard centre distance. */
    private static InvoluteFreedom involute(Optional<Double> angle) {
        InvoluteFreedom free = InvoluteFreedom.FREE;
        return new InvoluteFreedom(
                angle.map(List::of).orElse(free.pressureAngles()),
                free.followerShift(),
                Range.fixed(0),
                free.driverAddendum(),
                free.followerAddendum());
    }

    private MeshTeeth measure(MeshPair pair, ContactBand band) {
        ContactPath drawn = band.nominal().path();
        // Thinning turns flanks only: of the corners with one centre distance all have one curve.
        List<ContactPath> ends = List.of(
                band.corners().get(0).path(),
                band.corners().get(band.corners().size() - 1).path());
        List<ContactPath> all = Stream.concat(Stream.of(drawn), ends.stream()).toList();
        double turn = drawn.approachAngle() + drawn.recessAngle();
        return new MeshTeeth(
                pair,
                figures(
                        pair.driver(),
                        drawn.leastDriverArm(),
                        all.stream()
                                .mapToDouble(ContactPath::highestOnDriver)
                                .max()
                                .orElseThrow()),
                figures(
                        pair.follower(),
                        drawn.leastFollowerArm(),
                        all.stream()
                                .mapToDouble(ContactPath::highestOnFollower)
                                .max()
                                .orElseThrow()),
                new MeshTeeth.PathFigures(drawn.contactRatio(), drawn.approachAngle() / turn, band.bindingFriction()),
                new TracedTorque(drawn, ends));
    }

    private GearFigures figures(ToothForm form, double arm, double highest) {
        if (form instanceof LanternPinion pins) {
            return new GearFigures(pins.pitchRadius() + pins.pinDiameter() / 2, arm, Double.POSITIVE_INFINITY);
        }
        double tip = form.flank().tipRadius();
        ToothStrength strength = new ToothStrength(form, question.need.errors().mostThinning());
        return new GearFigures(tip, arm, strength.formFactor(Math.min(tip, highest)));
    }
}
