// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** The tails of lower halves with a number of meshes: bounds on all of them, and kinds of tails. The same for all escape wheels. */
final class Tails {
    /** So many kinds of tails are few enough to look at each behind every first mesh. */
    private static final double MOST_KINDS = 450;

    private final HalfRules rules;
    private final BooleanSupplier cancelled;

    /** Bounds on all tails behind a first mesh. */
    final TailBounds longest;

    /** The kinds of tails behind a first mesh; of halves with one mesh, the kinds of that mesh. */
    final List<TailKind> kinds;

    /** Number of all kinds, also of those that are the rest of another. */
    final int numbers;

    private int next;

    /**
     * Works out the tails.
     *
     * @param rules what both halves share
     * @param choices what may stand at each place below the centre, from the centre
     * @param cancelled asked often; once true the bounds are cut short and good for nothing
     */
    Tails(HalfRules rules, List<List<MeshChoice>> choices, BooleanSupplier cancelled) {
        this.rules = rules;
        this.cancelled = cancelled;
        double running = atEscape(rules, Criterion.RUNNING, 0);
        double binding = atEscape(rules, Criterion.BINDING, 0);
        TailBounds none = TailBounds.none(
                running,
                atEscape(rules, Criterion.RUNNING, 1) - running,
                binding,
                atEscape(rules, Criterion.BINDING, 1) - binding);
        this.kinds = kinds(none, choices);
        this.numbers = next;
        this.longest = choices.size() == 1
                ? none
                : TailBounds.least(kinds.stream().map(TailKind::bounds).toList());
    }

    /** Torque on the escape arbor if the escape wheel needs a torque, N m. */
    static double atEscape(HalfRules rules, Criterion criterion, double torque) {
        return rules.movement
                .regime(criterion)
                .arbor(ArborRole.ESCAPE)
                .load(
                        rules.movement.torqueAsked(criterion, torque),
                        rules.movement.parts().escapeWheelRadius(),
                        rules.movement.parts().escapeWheelMass());
    }

    private TailBounds inFront(TailBounds tail, List<MeshChoice> choices, ArborRole below) {
        return tail.withInFront(rules, choices, below, ArborRole.INTERMEDIATE, choice -> choice.bestFelt, cancelled);
    }

    private List<TailKind> kinds(TailBounds none, List<List<MeshChoice>> choices) {
        int longest = Math.max(1, choices.size() - 1);
        List<TailKind> shorter = List.of();
        for (int length = 1; length <= longest; length++) {
            List<List<MeshChoice>> before = choices.subList(0, choices.size() - length);
            List<Put> puts = new ArrayList<>();
            for (List<MeshChoice> group :
                    MeshGroups.of(choices.get(before.size()), 1, Math.pow(MOST_KINDS, 1.0 / longest))) {
                if (length == 1) {
                    puts.add(new Put(group, null));
                }
                shorter.forEach(rest -> puts.add(new Put(group, rest)));
            }
            int first = next;
            shorter = IntStream.range(0, puts.size())
                    .parallel()
                    .mapToObj(i -> kind(puts.get(i), first + i, none, before))
                    .toList();
            next += puts.size();
        }
        return shorter;
    }

    /** A group of meshes put in front of a kind of tails, or by itself. */
    private record Put(List<MeshChoice> group, TailKind rest) {}

    private TailKind kind(Put put, int number, TailBounds none, List<List<MeshChoice>> before) {
        return put.rest == null
                ? TailKind.last(number, put.group, inFront(none, put.group, ArborRole.ESCAPE), before)
                : put.rest.behind(
                        number, put.group, inFront(put.rest.bounds(), put.group, ArborRole.INTERMEDIATE), before);
    }
}
