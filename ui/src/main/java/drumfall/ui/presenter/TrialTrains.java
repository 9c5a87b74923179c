// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.MeshPlace;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.QuantityFormatException;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Trains with one figure changed to what was typed. */
final class TrialTrains {
    /** Counts that a train's sheet may hold; with the most meshes their products still fit whole numbers. */
    private static final int LEAST_COUNT = 2;

    private static final int MOST_COUNT = 1000;

    private TrialTrains() {}

    /** What was typed is no value of the figure; the message is a sentence for the maker. */
    static final class RefusedTrial extends Exception {
        RefusedTrial(String sentence) {
            super(sentence);
        }
    }

    static Train with(Train train, StripFigure figure, String typed) throws RefusedTrial {
        String text = typed.strip();
        return switch (figure.kind()) {
            case WHEEL, LEAVES, MODULE -> withMesh(train, figure, text);
            case DRUM ->
                new Train(train.meshes(), train.meshesAbove(), drum(text), train.reeving(), train.escapeTeeth());
            case FALLS ->
                new Train(
                        train.meshes(),
                        train.meshesAbove(),
                        train.drumDiameter(),
                        Reeving.of(count(text, 1, 2)).orElseThrow(),
                        train.escapeTeeth());
            case ESCAPE_TEETH ->
                new Train(
                        train.meshes(),
                        train.meshesAbove(),
                        train.drumDiameter(),
                        train.reeving(),
                        count(text, LEAST_COUNT, MOST_COUNT));
            case DISTANCE -> throw new RefusedTrial(Texts.of("trial.distance"));
            case DIRECTION, MOTION_DIRECTION -> throw new RefusedTrial(Texts.of("trial.direction"));
            case MOTION_DISTANCE, PALLET_DISTANCE -> throw new RefusedTrial(Texts.of("trial.ofbrief"));
            case MESHES_ABOVE, MESHES_BELOW -> throw new RefusedTrial(Texts.of("trial.meshes"));
        };
    }

    private static Train withMesh(Train train, StripFigure figure, String text) throws RefusedTrial {
        MeshPlace place = figure.place().orElseThrow();
        int index =
                place.side() == MeshPlace.Side.ABOVE ? place.number() - 1 : train.meshesAbove() + place.number() - 1;
        if (LockEdits.meshAt(train, place).isEmpty()) {
            throw new RefusedTrial(Texts.of("trial.nosuchmesh"));
        }
        List<Mesh> meshes = new ArrayList<>(train.meshes());
        meshes.set(index, changed(meshes.get(index), figure, text));
        return new Train(meshes, train.meshesAbove(), train.drumDiameter(), train.reeving(), train.escapeTeeth());
    }

    private static Mesh changed(Mesh mesh, StripFigure figure, String text) throws RefusedTrial {
        return switch (figure.kind()) {
            case WHEEL -> Mesh.of(count(text, LEAST_COUNT, MOST_COUNT), mesh.leafCount(), mesh.module());
            case LEAVES -> Mesh.of(mesh.toothCount(), count(text, LEAST_COUNT, MOST_COUNT), mesh.module());
            default -> new Mesh(mesh.counts(), module(text));
        };
    }

    /** A number of meshes typed for one side. */
    static int meshes(String typed) throws RefusedTrial {
        return count(typed.strip(), 1, 4);
    }

    private static int count(String text, int least, int most) throws RefusedTrial {
        OptionalInt count = text.matches("\\d{1,4}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
        if (count.isEmpty() || count.getAsInt() < least || count.getAsInt() > most) {
            throw new RefusedTrial(Texts.of("trial.count", text, least, most));
        }
        return count.getAsInt();
    }

    private static org.apache.commons.numbers.fraction.BigFraction drum(String text) throws RefusedTrial {
        Quantity length = length(text);
        double metres = length.si();
        if (metres < 0.001 || metres > 1) {
            throw new RefusedTrial(Texts.of("trial.drum", text));
        }
        return length.exact();
    }

    private static ToothModule module(String text) throws RefusedTrial {
        try {
            return ToothModule.ofMetres(length(text).exact());
        } catch (IllegalArgumentException refused) {
            throw new RefusedTrial(Texts.of("trial.module", text));
        }
    }

    /** Makers write modules and drums in millimetres, so a bare number is one. */
    private static Quantity length(String text) throws RefusedTrial {
        try {
            boolean bare = text.matches("[0-9.]+");
            return Quantity.parse(Dimension.LENGTH, bare ? text + " mm" : text);
        } catch (QuantityFormatException refused) {
            throw new RefusedTrial(Texts.of("trial.length", text));
        }
    }
}
