// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.MeshLock;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a brief leaves open to choose from, and what its locks leave of that. */
public final class BriefChoices {
    private final Brief brief;
    private final List<ToothModule> modules;
    private final List<BigFraction> drumDiameters;

    /**
     * The choices of a brief.
     *
     * @param brief the brief
     */
    public BriefChoices(Brief brief) {
        this.brief = brief;
        this.modules = brief.teeth().modules().stream()
                .map(module -> ToothModule.ofMetres(module.exact()))
                .sorted()
                .toList();
        BigFraction step = brief.drum().diameter().step().exact();
        BigFraction to = brief.drum().diameter().to().exact();
        this.drumDiameters = Stream.iterate(
                        brief.drum().diameter().from().exact(), size -> size.compareTo(to) <= 0, size -> size.add(step))
                .toList();
    }

    /** Modules the brief offers, smallest first. */
    public List<ToothModule> modules() {
        return modules;
    }

    /** Drum diameters the brief offers, m, smallest first. */
    public List<BigFraction> drumDiameters() {
        return drumDiameters;
    }

    /** Reevings the brief offers, fewest falls first. */
    public List<Reeving> reevings() {
        return brief.line().falls().stream()
                .sorted()
                .map(falls -> Reeving.of(falls).orElseThrow())
                .toList();
    }

    /** Escape-wheel counts the brief offers, fewest first. */
    public List<Integer> escapeTeeth() {
        Brief.CountSteps teeth = brief.escapement().teeth();
        return IntStream.iterate(teeth.from(), count -> count <= teeth.to(), count -> count + teeth.step())
                .boxed()
                .toList();
    }

    /** Drum diameters left by the locks, m, smallest first. */
    public List<BigFraction> drumDiametersLeft() {
        return drumDiameters().stream()
                .filter(size -> brief.locks()
                        .drumDiameter()
                        .map(held -> held.exact().compareTo(size) == 0)
                        .orElse(true))
                .toList();
    }

    /** Reevings left by the locks, fewest falls first. */
    public List<Reeving> reevingsLeft() {
        return reevings().stream()
                .filter(reeving -> brief.locks()
                        .falls()
                        .map(held -> held == reeving.falls())
                        .orElse(true))
                .toList();
    }

    /** Escape-wheel counts left by the locks, fewest first. */
    public List<Integer> escapeTeethLeft() {
        return escapeTeeth().stream()
                .filter(count -> brief.locks().escapeTeeth().map(count::equals).orElse(true))
                .toList();
    }

    /** Numbers of meshes above the centre left by the locks, fewest first. */
    public List<Integer> meshesAboveLeft() {
        return left(brief.train().above(), brief.locks().meshesAbove(), MeshPlace.Side.ABOVE);
    }

    /** Numbers of meshes below the centre left by the locks, fewest first. */
    public List<Integer> meshesBelowLeft() {
        return left(brief.train().below(), brief.locks().meshesBelow(), MeshPlace.Side.BELOW);
    }

    private List<Integer> left(Brief.MeshRange range, Optional<Integer> held, MeshPlace.Side side) {
        int lastLocked = brief.locks().meshes().stream()
                .map(MeshLock::place)
                .filter(place -> place.side() == side)
                .mapToInt(MeshPlace::number)
                .max()
                .orElse(0);
        return IntStream.rangeClosed(range.from(), range.to())
                .filter(count -> held.map(number -> number == count).orElse(true) && count >= lastLocked)
                .boxed()
                .toList();
    }
}
