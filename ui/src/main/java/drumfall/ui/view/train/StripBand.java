// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.solver.rating.Rating;
import drumfall.ui.view.train.PowerBand.Station;
import drumfall.ui.view.train.StripReading.Kind;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Places the thinning band of power with the torque and power of each arbor under it. */
final class StripBand {
    private static final double SIZE = 12;

    /** A band thinner than this would not be seen, drawing units. */
    private static final double THINNEST = 1;

    private final StripTerms terms;
    private final StripFrame frame;
    private final Optional<PowerBand> shown;
    private final Optional<PowerBand> chosen;

    StripBand(StripTerms terms, StripFrame frame) {
        this.terms = terms;
        this.frame = frame;
        this.shown = band(terms.shown());
        this.chosen = band(terms.chosen());
    }

    private Optional<PowerBand> band(Rating rating) {
        return PowerBand.of(rating, terms.content().brief());
    }

    List<StripPlan.BandPiece> pieces() {
        return shown.map(this::pieces).orElse(List.of());
    }

    private List<StripPlan.BandPiece> pieces(PowerBand band) {
        List<StripPlan.BandPiece> pieces = new ArrayList<>();
        List<Station> arbors = band.arbors();
        double step = Math.min(10 * frame.unit(), 0.15 * frame.slot());
        double x = frame.drumX();
        double power = band.weight();
        pieces.add(piece(0, x - 0.42 * frame.slot(), x, power, arbors.get(0).in(), band));
        for (int i = 0; i < arbors.size(); i++) {
            Station station = arbors.get(i);
            double arborX = frame.arborX(i);
            if (i > 0) {
                pieces.add(piece(i - 1, x, arborX - step, power, station.in(), band));
            }
            double from = i == 0 ? x : arborX - step;
            pieces.add(piece(i, from, arborX + step, station.in(), station.out(), band));
            x = arborX + step;
            power = station.out();
        }
        pieces.add(piece(arbors.size() - 1, x, frame.pendulumX(), power, band.pendulum(), band));
        return pieces;
    }

    private StripPlan.BandPiece piece(int arbor, double from, double to, double before, double after, PowerBand band) {
        double thick = half(before, band);
        double thin = half(after, band);
        double middle = frame.bandMiddle();
        Path2D path = new Path2D.Double();
        path.moveTo(from, middle - thick);
        path.lineTo(to, middle - thin);
        path.lineTo(to, middle + thin);
        path.lineTo(from, middle + thick);
        path.closePath();
        return new StripPlan.BandPiece(arbor, path);
    }

    private double half(double power, PowerBand band) {
        return Math.max(THINNEST * frame.unit(), frame.bandHeight() * power / band.weight()) / 2;
    }

    List<StripSpot> spots() {
        double size = size();
        List<StripSpot> spots = new ArrayList<>();
        for (int i = 0; i < arbors(); i++) {
            spots.add(reading(Kind.TORQUE, i, size, frame.torqueRow()));
            spots.add(reading(Kind.POWER, i, size, frame.powerRow()));
        }
        return spots;
    }

    private int arbors() {
        return frame.faces().meshes().size() + 1;
    }

    /** One size for all, so that they read as a row: as large as the longest allows. */
    private double size() {
        double wanted = SIZE * frame.unit();
        double widest = IntStream.range(0, arbors())
                .boxed()
                .flatMap(arbor -> Stream.of(Kind.TORQUE, Kind.POWER).map(kind -> width(kind, arbor, wanted)))
                .mapToDouble(Double::doubleValue)
                .max()
                .orElseThrow();
        return wanted * Math.min(1, (frame.slot() - 2 * frame.unit()) / widest);
    }

    private double width(Kind kind, int arbor, double size) {
        Figure now = now(kind, arbor);
        Figure old = old(kind, arbor);
        return StripSpot.width(terms.text(), old, Optional.of(now).filter(value -> !value.equals(old)), size);
    }

    private StripSpot reading(Kind kind, int arbor, double size, double middle) {
        StripReading reading = new StripReading(kind, arbor);
        return terms.spot(reading, old(kind, arbor), now(kind, arbor), size, frame.arborX(arbor), middle, 0.5);
    }

    private Figure now(Kind kind, int arbor) {
        return of(shown, kind, arbor);
    }

    /** Where columns are narrow, only the tried value is shown. */
    private Figure old(Kind kind, int arbor) {
        return frame.roomy() ? of(chosen, kind, arbor) : now(kind, arbor);
    }

    private Figure of(Optional<PowerBand> band, Kind kind, int arbor) {
        return band.filter(found -> arbor < found.arbors().size())
                .map(found -> found.arbors().get(arbor))
                .map(station -> kind == Kind.TORQUE
                        ? terms.figures().torque(station.torque())
                        : terms.figures().power(station.out()))
                .orElse(Figure.NONE);
    }

    List<StripPlan.Note> notes() {
        return List.of(caption("torque", frame.torqueRow()), caption("power", frame.powerRow()));
    }

    private StripPlan.Note caption(String key, double middle) {
        double unit = frame.unit();
        return new StripPlan.Note(TrainText.of(key), 14 * unit, middle + 4 * unit, 11 * unit, StripPlan.Tone.LIGHTER);
    }
}
