// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.rating.CellFront;
import drumfall.solver.rating.TrainRater;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * What all listings of a brief's halves share: the choices at each place and the best that upper halves and tails can be.
 * Not safe for use by several threads at once.
 */
public final class HalfTables {
    final HalfRules rules;
    private final Map<MeshPlace, List<MeshChoice>> choices;
    private final Map<Double, List<UpperBest>> uppers;
    private final Map<Integer, List<EscapeSide>> sides;
    private final Map<Integer, CentreOutlook> outlooks;

    /**
     * The tables of a brief, filled as they are asked for.
     *
     * @param rater rates against the brief
     */
    public HalfTables(TrainRater rater) {
        this.rules = new HalfRules(rater);
        this.choices = new HashMap<>();
        this.uppers = new HashMap<>();
        this.sides = new HashMap<>();
        this.outlooks = new HashMap<>();
    }

    private HalfTables(HalfRules rules, HalfTables known) {
        this.rules = rules;
        this.choices = known.choices;
        this.uppers = known.uppers;
        this.sides = known.sides;
        this.outlooks = known.outlooks;
    }

    /**
     * The same tables for a rater that differs in the trains it refuses only.
     *
     * @param rater rates against the same brief
     */
    public HalfTables knowing(TrainRater rater) {
        return new HalfTables(new HalfRules(rater), this);
    }

    /** Number of choices for the first mesh below the centre, by the demands on one mesh alone. */
    public int choicesBelow() {
        return choicesAt(MeshPlace.Side.BELOW, 1).size();
    }

    /** An empty front, against which every half has prospects. */
    CellFront nothing() {
        return new CellFront(rules.rater.objectives().asked());
    }

    /** Everything that may stand at a place by the demands on one mesh alone, lowest ratio first. */
    List<MeshChoice> choicesAt(MeshPlace.Side side, int number) {
        return kept(
                choices,
                new MeshPlace(side, number),
                () -> List.copyOf(new MeshChoices(rules.rater).at(new MeshPlace(side, number))),
                () -> false);
    }

    /**
     * The best that upper halves can be.
     *
     * @param longestMemory a memory that no lower half exceeds, s
     * @param cancelled asked often; once true the list is cut short and good for nothing
     */
    List<UpperBest> uppers(double longestMemory, BooleanSupplier cancelled) {
        return kept(uppers, longestMemory, () -> UpperOutlook.of(this, longestMemory, cancelled), cancelled);
    }

    /**
     * The sides of all escape wheels, with every choice below the centre.
     *
     * @param count meshes from the centre to the escape wheel, at least 1
     * @param cancelled asked often; once true the sides are cut short and good for nothing
     */
    List<EscapeSide> sides(int count, BooleanSupplier cancelled) {
        return kept(sides, count, () -> EscapeSide.all(rules, choicesBelow(count), cancelled), cancelled);
    }

    /**
     * What upper halves make of lower ones.
     *
     * @param count meshes from the centre to the escape wheel, at least 1
     * @param all the sides of all escape wheels with so many meshes, at least one
     * @param cancelled asked often; once true the outlook is cut short and good for nothing
     */
    CentreOutlook outlook(int count, List<EscapeSide> all, BooleanSupplier cancelled) {
        return kept(outlooks, count, () -> newOutlook(all, cancelled), cancelled);
    }

    private CentreOutlook newOutlook(List<EscapeSide> all, BooleanSupplier cancelled) {
        List<MeshChoice> first = choicesAt(MeshPlace.Side.BELOW, 1);
        return new CentreOutlook(
                this,
                all.stream().mapToDouble(side -> side.leastLoad(first)).min().orElseThrow(),
                all.stream().mapToDouble(side -> side.shortestMemory).min().orElseThrow(),
                all.stream().mapToDouble(side -> side.longestMemory).max().orElseThrow(),
                cancelled);
    }

    private List<List<MeshChoice>> choicesBelow(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(number -> choicesAt(MeshPlace.Side.BELOW, number))
                .toList();
    }

    /** What is known already, or is found now and kept unless it was cut short. */
    private static <K, V> V kept(Map<K, V> known, K key, Supplier<V> found, BooleanSupplier cancelled) {
        V value = known.get(key);
        if (value == null) {
            value = found.get();
            if (!cancelled.getAsBoolean()) {
                known.put(key, value);
            }
        }
        return value;
    }
}
