// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.layout.AngleGrid;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.LayoutOutcome;
import drumfall.solver.layout.Locks;
import drumfall.solver.layout.Preference;
import drumfall.solver.layout.place.Placer;
import drumfall.solver.layout.size.ArborSize;
import drumfall.solver.layout.size.DialPlace;
import drumfall.solver.layout.size.DrumSize;
import drumfall.solver.layout.size.Envelope;
import drumfall.solver.layout.size.EscapeSize;
import drumfall.solver.layout.size.Face;
import drumfall.solver.layout.size.Gaps;
import drumfall.solver.layout.size.HangingLine;
import drumfall.solver.layout.size.MeshSpacing;
import drumfall.solver.layout.size.MotionSize;
import drumfall.solver.layout.size.MovementParts;
import drumfall.solver.layout.size.Pillars;
import drumfall.solver.layout.size.Side;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.placing.TrainPlacing;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.PlacedState.Seen;
import drumfall.ui.work.LatestDesk;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** An eight-day train and a movement of plausible sizes for it; the counts are our own, printed sizes common practice. */
public final class PlacedTrains {
    /** A millimetre, nm. */
    public static final long MM = 1_000_000;

    private PlacedTrains() {}

    /** Four meshes, the centre arbor the second after the drum. */
    public static Train train() {
        return new Train(
                List.of(
                        MeshTrains.mesh(72, 10, "1.5"),
                        MeshTrains.mesh(60, 10, "1.25"),
                        MeshTrains.mesh(64, 10, "1"),
                        MeshTrains.mesh(60, 8, "1")),
                2,
                BigFraction.of(52, 1000),
                Reeving.SINGLE,
                30);
    }

    /** What a layout of {@link #train} must meet in a roomy frame with pillars. */
    public static LayoutNeed need() {
        return need(300, 420);
    }

    /** What a layout must meet in a frame of some width and height, mm. */
    public static LayoutNeed need(long width, long height) {
        Envelope frame = new Envelope(
                width * MM,
                height * MM,
                130 * MM,
                4 * MM,
                Optional.of(new Pillars(6 * MM, 10 * MM, 10 * MM)),
                DialPlace.onVertical(width * MM / 2));
        return new LayoutNeed(
                parts(),
                new HangingLine(2 * MM, 26 * MM, Side.ofLine(2), 0, 50 * MM, 90 * MM),
                new Gaps(MM, MM, MM / 2),
                frame,
                Locks.NONE,
                Preference.ANY,
                new AngleGrid(48));
    }

    private static MovementParts parts() {
        return new MovementParts(
                2,
                Collections.nCopies(5, new ArborSize(3 * MM / 2, 3 * MM, false)),
                List.of(mesh(72, 10, 1500), mesh(60, 10, 1250), mesh(64, 10, 1000), mesh(60, 8, 1000)),
                new DrumSize(30 * MM, 35 * MM, 3 * MM, Face.FRONT),
                new EscapeSize(25 * MM, 6 * MM, 35 * MM, EscapeSize.ABOVE, 24 * MM, 3 * MM / 2),
                Optional.of(new MotionSize(24 * MM, 9 * MM, 19 * MM, 7 * MM, 20 * MM, 2 * MM, 5 * MM, 5 * MM)));
    }

    /** A module in micrometres; an addendum of one module, planes of 5 mm and 7 mm. */
    private static MeshSpacing mesh(int toothCount, int leafCount, long module) {
        long half = module * 1000 / 2;
        return new MeshSpacing(
                half * (toothCount + leafCount), half * (toothCount + 2), half * (leafCount + 2), 5 * MM, 7 * MM);
    }

    /** A layout of the train. */
    public static Layout layout() {
        return ((LayoutOutcome.Placed) Placer.place(need(), () -> false)).layout();
    }

    /** The layout with its train, nothing before the front plate. */
    public static Seen seen() {
        return new Seen(layout(), train(), PlacedFront.NONE);
    }

    /** A train for the demonstration's drum that a great wheel of 85 drives; its counts are our own. */
    public static Train weekly() {
        return new Train(
                List.of(
                        MeshTrains.mesh(85, 10, "1.5"),
                        MeshTrains.mesh(66, 12, "1.5"),
                        MeshTrains.mesh(83, 12, "1"),
                        MeshTrains.mesh(55, 12, "1")),
                1,
                BigFraction.of(36, 1000),
                Reeving.DOUBLE,
                21);
    }

    /** A train placed as a brief asks, with what stands before its front plate. */
    public static Seen seen(Brief brief, Train train) {
        TrainRater rater = new TrainRater(brief);
        Layout layout =
                new TrainPlacing(rater).place(train, () -> false).found().orElseThrow();
        return new Seen(layout, train, PlacedFront.of(rater, rater.rate(train), layout));
    }

    /** A sheet on the train, placed; its desk ends with the program. */
    public static PlacedSheet sheet(Turns turns, Workspace workspace) {
        PlacedSheet sheet =
                new PlacedSheet(workspace, (brief, train) -> Optional.of(need()), new LatestDesk(turns, "layout"));
        workspace.choose(train());
        turns.until(() -> !sheet.state().busy());
        return sheet;
    }
}
