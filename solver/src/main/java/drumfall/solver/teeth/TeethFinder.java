// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

import drumfall.solver.teeth.choice.FormChooser;
import drumfall.solver.teeth.choice.MeshNeed;
import drumfall.solver.teeth.choice.ToothFamily;
import drumfall.solver.teeth.contact.ContactBand;
import drumfall.solver.teeth.contact.ContactPath;
import drumfall.solver.teeth.contact.MeshConditions;
import drumfall.solver.teeth.contact.MeshTracer;
import drumfall.solver.teeth.contact.PathCache;
import drumfall.solver.teeth.contact.Sampling;
import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.teeth.form.ToothForm;
import drumfall.solver.teeth.outline.ToothArea;
import drumfall.solver.teeth.outline.ToothStrength;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

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
    private record Question(ToothFamily family, Optional<Double> pressureAngle, FixedShape shape, MeshNeed need) {}

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
        Question question = new Question(needs.family(), needs.pressureAngle(), needs.shape(), need);
        Optional<MeshTeeth> known = KNOWN.get(question);
        if (known == null) {
            known = new TeethFinder(question).find();
            KNOWN.put(question, known);
        }
        return known;
    }

    private Optional<MeshTeeth> find() {
        FormChooser chooser = new FormChooser(
                question.shape.involute(question.pressureAngle),
                question.shape.cycloidal(),
                question.shape.lantern(),
                new PathCache(1));
        return chooser.pair(question.need, question.family).flatMap(this::measure);
    }

    /** Measures a pair, unless it jams somewhere in the band. */
    private Optional<MeshTeeth> measure(MeshPair pair) {
        ContactPath drawn = trace(pair, 0);
        List<ContactPath> all = List.of(
                drawn,
                trace(pair, question.need.errors().closest()),
                trace(pair, question.need.errors().widest()));
        return all.stream().allMatch(path -> path.clearances().leastBacklash() >= 0)
                ? Optional.of(teeth(pair, drawn, all))
                : Optional.empty();
    }

    /** Thinning turns flanks and leaves the curve alone; its least value is the one that tests the backlash. */
    private ContactPath trace(MeshPair pair, double error) {
        double thinning = question.need.errors().leastThinning();
        return MeshTracer.trace(pair, new MeshConditions(error, thinning, thinning), Sampling.SWIFT);
    }

    private MeshTeeth teeth(MeshPair pair, ContactPath drawn, List<ContactPath> all) {
        double turn = drawn.approachAngle() + drawn.recessAngle();
        return new MeshTeeth(
                pair,
                figures(pair.driver(), drawn.leastDriverArm(), most(all, ContactPath::highestOnDriver)),
                figures(pair.follower(), drawn.leastFollowerArm(), most(all, ContactPath::highestOnFollower)),
                new MeshTeeth.PathFigures(
                        drawn.contactRatio(),
                        drawn.approachAngle() / turn,
                        -most(all, path -> -path.bindingFriction())),
                new TracedTorque(all));
    }

    private static double most(List<ContactPath> paths, ToDoubleFunction<ContactPath> figure) {
        return paths.stream().mapToDouble(figure).max().orElseThrow();
    }

    private GearFigures figures(ToothForm form, double arm, double highest) {
        if (form instanceof LanternPinion pins) {
            double pin = pins.pinDiameter() / 2;
            return new GearFigures(
                    pins.pitchRadius() + pin,
                    arm,
                    Double.POSITIVE_INFINITY,
                    pins.pitchRadius() - pin,
                    pins.leafCount() * Math.PI * pin * pin);
        }
        double tip = form.flank().tipRadius();
        ToothStrength strength = new ToothStrength(form, question.need.errors().mostThinning());
        return new GearFigures(
                tip,
                arm,
                strength.formFactor(Math.min(tip, highest)),
                form.flank().rootRadius(),
                ToothArea.disc(form));
    }
}
