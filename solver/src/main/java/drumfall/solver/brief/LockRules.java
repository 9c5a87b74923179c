// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.SheetProblem;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What is held fast is among what the brief allows. */
final class LockRules {
    private LockRules() {}

    /** Applies a rule to each lock on a mesh, with the lock's pointer. */
    private static Stream<SheetProblem> each(Brief brief, BiFunction<String, MeshLock, Stream<SheetProblem>> rule) {
        List<MeshLock> locks = brief.locks().meshes();
        return IntStream.range(0, locks.size())
                .mapToObj(index -> rule.apply("/locks/meshes/" + index, locks.get(index)))
                .flatMap(problems -> problems);
    }

    static Stream<SheetProblem> eachMeshIsHeldOnce(Brief brief) {
        List<MeshPlace> places =
                brief.locks().meshes().stream().map(MeshLock::place).toList();
        return IntStream.range(0, places.size())
                .boxed()
                .flatMap(index -> Clash.unless(
                        places.indexOf(places.get(index)) == index,
                        "/locks/meshes/%d/place".formatted(index),
                        places.get(index).toString(),
                        "each mesh may have one lock",
                        "put everything held of this mesh into one lock"));
    }

    static Stream<SheetProblem> eachLockHoldsSomething(Brief brief) {
        return each(
                brief,
                (pointer, lock) -> Clash.unless(
                        !lock.isOpen(),
                        pointer,
                        lock.place().toString(),
                        "a lock on a mesh must hold its wheel, leaves, module, distance or direction",
                        "add one of them or remove the lock"));
    }

    static Stream<SheetProblem> heldMeshesExist(Brief brief) {
        return each(brief, (pointer, lock) -> {
            int most = mostMeshes(brief, lock.place().side());
            return Clash.unless(
                    lock.place().number() <= most,
                    pointer + "/place/number",
                    String.valueOf(lock.place().number()),
                    "at most %d %s allowed on this side of the centre"
                            .formatted(most, most == 1 ? "mesh is" : "meshes are"),
                    "hold an earlier mesh or allow more meshes");
        });
    }

    private static int mostMeshes(Brief brief, MeshPlace.Side side) {
        boolean above = side == MeshPlace.Side.ABOVE;
        Optional<Integer> held =
                above ? brief.locks().meshesAbove() : brief.locks().meshesBelow();
        return held.orElse((above ? brief.train().above() : brief.train().below()).to());
    }

    static Stream<SheetProblem> heldWheelsAreAllowed(Brief brief) {
        Brief.WheelRange range = brief.teeth().wheelTeeth();
        return each(
                brief,
                (pointer, lock) ->
                        within(pointer + "/wheel", lock.wheel(), range.from(), range.to(), "teeth of a wheel"));
    }

    static Stream<SheetProblem> heldLeavesAreAllowed(Brief brief) {
        Brief.LeafRange range = brief.teeth().leaves();
        return each(
                brief,
                (pointer, lock) ->
                        within(pointer + "/leaves", lock.leaves(), range.from(), range.to(), "leaves of a pinion"));
    }

    static Stream<SheetProblem> heldModulesAreListed(Brief brief) {
        List<Quantity> modules = brief.teeth().modules();
        return each(
                brief,
                (pointer, lock) -> lock.module().stream()
                        .flatMap(module -> Clash.unless(
                                modules.stream().anyMatch(module::sameValueAs),
                                pointer + "/module",
                                module,
                                "the module must be one of those listed, which are "
                                        + modules.stream().map(Quantity::text).collect(Collectors.joining(", ")),
                                "hold one of them or add this one to the list")));
    }

    static Stream<SheetProblem> heldDistancesAgree(Brief brief) {
        return each(
                brief,
                (pointer, lock) -> lock.distance().stream()
                        .flatMap(held -> madeDistance(lock).stream()
                                .flatMap(made -> Clash.unless(
                                        lock.distanceMetBy(made.exact()),
                                        pointer + "/distance",
                                        held,
                                        "wheel, leaves and module held of this mesh put it on " + made.text(),
                                        "hold that distance or let one of the four go"))));
    }

    /** The centre distance of a mesh of which everything else is held. */
    private static Optional<Quantity> madeDistance(MeshLock lock) {
        return lock.module()
                .flatMap(module -> lock.wheel()
                        .flatMap(wheel -> lock.leaves()
                                .map(leaves -> Quantity.of(
                                        module.exactIn("mm")
                                                .multiply(wheel + leaves)
                                                .divide(2),
                                        Dimension.LENGTH.unit("mm")))));
    }

    static Stream<SheetProblem> heldMotionDirectionIsOfAMotionWork(Brief brief) {
        return ofMotionWork(brief, "direction", brief.locks().motionDirection(), "/locks/motionDirection");
    }

    static Stream<SheetProblem> heldMotionDistanceIsOfAMotionWork(Brief brief) {
        return ofMotionWork(brief, "distance", brief.locks().motionDistance(), "/locks/motionDistance");
    }

    private static Stream<SheetProblem> ofMotionWork(
            Brief brief, String what, Optional<Quantity> locked, String pointer) {
        return locked.stream()
                .flatMap(held -> Clash.unless(
                        brief.hands().motionWork(),
                        pointer,
                        held,
                        "the %s of the motion work can be held only if there is one, and \"hands\" asks for none"
                                .formatted(what),
                        "let the %s go or ask for a motion work".formatted(what)));
    }

    static Stream<SheetProblem> heldMeshesAboveAreAllowed(Brief brief) {
        Brief.MeshRange range = brief.train().above();
        return within(
                "/locks/meshesAbove", brief.locks().meshesAbove(), range.from(), range.to(), "meshes above the centre");
    }

    static Stream<SheetProblem> heldMeshesBelowAreAllowed(Brief brief) {
        Brief.MeshRange range = brief.train().below();
        return within(
                "/locks/meshesBelow", brief.locks().meshesBelow(), range.from(), range.to(), "meshes below the centre");
    }

    static Stream<SheetProblem> heldDrumIsOnTheSteps(Brief brief) {
        Brief.Steps steps = brief.drum().diameter();
        return brief.locks().drumDiameter().stream()
                .flatMap(held -> Clash.unless(
                        steps.from().compareTo(held) <= 0
                                && held.compareTo(steps.to()) <= 0
                                && RangeRules.onSteps(steps, held),
                        "/locks/drumDiameter",
                        held,
                        "the drum may measure from \"%s\" to \"%s\" in steps of \"%s\""
                                .formatted(steps.from(), steps.to(), steps.step()),
                        "hold one of these sizes or change the range"));
    }

    static Stream<SheetProblem> heldFallsAreOffered(Brief brief) {
        List<Integer> falls = brief.line().falls();
        return brief.locks().falls().stream()
                .flatMap(held -> Clash.unless(
                        falls.contains(held),
                        "/locks/falls",
                        String.valueOf(held),
                        "the falls held must be among those offered, which are "
                                + falls.stream().map(String::valueOf).collect(Collectors.joining(", ")),
                        "hold one of them or offer this one in \"line\""));
    }

    static Stream<SheetProblem> heldEscapeTeethAreOnTheSteps(Brief brief) {
        Brief.CountSteps steps = brief.escapement().teeth();
        return brief.locks().escapeTeeth().stream()
                .flatMap(held -> Clash.unless(
                        steps.from() <= held && held <= steps.to() && RangeRules.onSteps(steps, held),
                        "/locks/escapeTeeth",
                        String.valueOf(held),
                        "the escape wheel may have from %d to %d teeth in steps of %d"
                                .formatted(steps.from(), steps.to(), steps.step()),
                        "hold one of these counts or change the range"));
    }

    private static Stream<SheetProblem> within(String pointer, Optional<Integer> held, int from, int to, String what) {
        return held.stream()
                .flatMap(count -> Clash.unless(
                        from <= count && count <= to,
                        pointer,
                        String.valueOf(count),
                        "the %s must be from %d to %d".formatted(what, from, to),
                        "hold a count in that range or widen the range"));
    }
}
