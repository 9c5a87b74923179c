// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.fitting;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.Brief.ArborBuild;
import drumfall.solver.brief.Fit;
import drumfall.solver.fit.bore.Bearing;
import drumfall.solver.fit.bore.DrillRack;
import drumfall.solver.fit.bore.DrillSeries;
import drumfall.solver.fit.bore.Finish;
import drumfall.solver.fit.bore.FinishedHole;
import drumfall.solver.fit.bore.Pivot;
import drumfall.solver.fit.bore.Seating;
import drumfall.solver.fit.bore.SeatingRules;
import drumfall.solver.fit.layer.LayerGrid;
import drumfall.solver.fit.layer.LayerRounding;
import drumfall.solver.fit.shake.ShakeBand;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.quantity.Quantity;
import java.util.Optional;

/**
 * What a brief says of bores, drills, layers and end shake.
 *
 * @param brief the brief
 */
public record BriefFit(Brief brief) {
    /** Radial play of small ball bearings of the usual group at its largest, nm: ISO 5753-1, 13 µm, from memory. */
    private static final long RADIAL_PLAY = 13_000;

    private Fit fit() {
        return brief.fit();
    }

    /** Drills at hand, skim and shrinkage. */
    public Finish finish() {
        DrillRack rack = switch (fit().drills()) {
            case METRIC -> DrillRack.of(DrillSeries.METRIC);
            case INCH -> DrillRack.of(DrillSeries.FRACTIONAL_INCH);
            case METRIC_AND_INCH -> DrillRack.of(DrillSeries.METRIC, DrillSeries.FRACTIONAL_INCH);
        };
        return new Finish(rack, nanometres(fit().skim()), nanometres(fit().shrinkage()));
    }

    /** The heights that the printer can make. */
    public LayerGrid grid() {
        return new LayerGrid(
                nanometres(fit().firstLayer()), nanometres(brief.printer().layer()));
    }

    /** The end shake that is wanted. */
    public ShakeBand band() {
        return new ShakeBand(
                nanometres(fit().endShake().low()), nanometres(fit().endShake().high()));
    }

    /** By how much the height of a printed part may be off either way, nm. */
    public long heightError() {
        return nanometres(fit().heightError());
    }

    /** How pivots are carried in the plates. */
    public SeatingRules seats() {
        return new SeatingRules(
                finish(), nanometres(fit().clearance()), nanometres(fit().seatClearance()), grid(), LayerRounding.UP);
    }

    /**
     * The hole that a rod runs in, or that turns on it.
     *
     * @param name its place
     * @param rod the rod's diameter
     * @throws drumfall.solver.fit.FitException if no drill serves
     */
    public FinishedHole running(String name, Quantity rod) {
        return FinishedHole.bore(name, nanometres(rod), nanometres(fit().clearance()), finish());
    }

    /**
     * The hole that a rod is held in.
     *
     * @param name its place
     * @param rod the rod's diameter
     * @throws drumfall.solver.fit.FitException if no drill serves
     */
    public FinishedHole holding(String name, Quantity rod) {
        return FinishedHole.bore(name, nanometres(rod), 0, finish());
    }

    /** The bearing of an arbor, if the brief gives its size; named by bore, outer diameter and width. */
    public static Optional<Bearing> bearing(ArborBuild build) {
        return build.bearing()
                .map(size -> new Bearing(
                        build.diameter() + " × " + size.outer() + " × " + size.width(),
                        nanometres(build.diameter()),
                        nanometres(size.outer()),
                        nanometres(size.width()),
                        RADIAL_PLAY));
    }

    /**
     * The seat of an arbor's bearing in a plate; empty if the brief does not give the bearing's size.
     *
     * @param arbor name of the arbor
     * @param plate name of the plate
     * @param build how the arbor is built
     * @throws drumfall.solver.fit.FitException if no drill serves
     */
    public Optional<Seating.Rolling> seat(String arbor, String plate, ArborBuild build) {
        return bearing(build)
                .map(bearing -> seats().rolling(new Pivot(arbor, plate, nanometres(build.diameter())), bearing));
    }

    static long nanometres(Quantity length) {
        return Nanometres.of(length.si());
    }
}
