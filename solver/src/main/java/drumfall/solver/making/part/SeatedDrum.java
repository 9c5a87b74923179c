// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making.part;

import static drumfall.solver.making.part.Lengths.mm;

import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.making.solid.Solid;
import java.util.List;
import java.util.Optional;

/**
 * A drum that turns on a rod that stands still, with the seat of a rolling bearing at the end of its second flange.
 *
 * <p>A seat as shallow as the flange allows lies in the flange. A deeper one goes through the flange into the drum, whose tube
 * around the rod widens under it at 45 degrees at most, so that it prints without support and leaves the pins of the other
 * flange where they are.
 *
 * @param drum the drum
 * @param seat its seat
 */
public record SeatedDrum(Drum drum, HubSeat seat) implements PrintedShape {
    /** Sums of decimal sizes miss each other in the last digits; a nanometre is nothing to a printer. */
    private static final double HAIR = 1e-9;

    /**
     * Checks that there is room for the seat.
     *
     * @throws drumfall.solver.fit.FitException if the seat is wider than drum and second flange allow
     * @throws SizeLimitException if the drum is too short for it
     */
    public SeatedDrum {
        if (!inFlange(drum, seat) && hollow(drum)) {
            double spigot = drum.print().wall() + 2 * drum.print().fit();
            seat.requireDiameter(
                    mm(2 * (drum.tub().chamberOuter() - spigot - drum.print().wall())),
                    "the drum's tube and the flange's spigot",
                    "a wider drum");
            double funnel = steps(drum, seat) * drum.print().layer();
            SizeLimitException.atLeast(
                    "length of a drum with a bearing seat",
                    drum.length(),
                    depth(drum, seat) + funnel + drum.print().layer(),
                    "the seat and what widens the drum's tube under it");
        }
    }

    private static boolean hollow(Drum drum) {
        return drum.tub().hollow();
    }

    private static boolean inFlange(Drum drum, HubSeat seat) {
        return seat.depth() <= drum.wall() - 2 * drum.print().layer() + HAIR;
    }

    /** How deep the seat is in the drum itself, m. */
    private static double depth(Drum drum, HubSeat seat) {
        return Math.max(0, seat.depth() - drum.wall());
    }

    /** Radius of the drum's tube around the seat, m. */
    private static double tube(Drum drum, HubSeat seat) {
        return Math.max(
                drum.tub().chamberInner(), seat.diameter() / 2 + drum.print().wall());
    }

    /** Layers in which the tube widens, each by no more than its height or half an extrusion width. */
    private static long steps(Drum drum, HubSeat seat) {
        double step = Math.min(drum.print().layer(), drum.print().extrusion() / 2);
        return (long) Math.ceil((tube(drum, seat) - drum.tub().chamberInner()) / step - HAIR);
    }

    /** The drum with its lower flange. */
    @Override
    public Solid solid() {
        double depth = depth(drum, seat);
        if (inFlange(drum, seat) || depth == 0) {
            return drum.solid();
        }
        return hollow(drum) ? widened(depth) : cut(depth);
    }

    private Solid widened(double depth) {
        Tub tub = drum.tub();
        double narrow = tub.chamberInner();
        double wide = tube(drum, seat);
        long steps = steps(drum, seat);
        double layer = drum.print().layer();
        Solid floor = new Solid(
                List.of(tub.solid(drum.knot(), drum.pins().holes()).slabs().get(0)));
        Solid solid = floor.topped(mm(drum.length() - depth - steps * layer), tub.tubes(narrow, drum.bore()));
        for (long step = 1; step <= steps; step++) {
            solid = solid.topped(mm(layer), tub.tubes(narrow + (wide - narrow) * step / steps, drum.bore()));
        }
        return solid.topped(mm(depth), tub.tubes(wide, seat.diameter()));
    }

    /** A drum without a chamber keeps its pins' holes to its end. */
    private Solid cut(double depth) {
        double pins = drum.pins().count() == 0
                ? drum.diameter() / 2
                : drum.pins().radius() - drum.pins().diameter() / 2;
        seat.requireDiameter(mm(2 * (pins - drum.print().wall())), "the pins of the ratchet", "a wider drum");
        HubSeat inDrum = new HubSeat(seat.place(), seat.diameter(), depth);
        return HubSeat.cut(drum.solid(), Optional.empty(), Optional.of(inDrum), drum.print());
    }

    /** The other flange, bored for the bearing. */
    public Solid flange() {
        return inFlange(drum, seat)
                ? HubSeat.cut(drum.flange(), Optional.of(seat), Optional.empty(), drum.print())
                : drum.tub().lid(seat.diameter(), tube(drum, seat), drum.print());
    }
}
