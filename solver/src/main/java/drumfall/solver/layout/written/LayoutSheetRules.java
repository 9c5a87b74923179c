// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.written;

import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.written.LayoutSheet.PlaceEntry;
import drumfall.solver.layout.written.LayoutSheet.SpanEntry;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.SheetProblem;
import java.util.ArrayList;
import java.util.List;

/** What keeps a sheet from being a layout of a need at all; gaps are not looked at. */
final class LayoutSheetRules {
    private final LayoutSheet sheet;
    private final LayoutNeed need;
    private final List<SheetProblem> problems = new ArrayList<>();

    LayoutSheetRules(LayoutSheet sheet, LayoutNeed need) {
        this.sheet = sheet;
        this.need = need;
    }

    /** The first kind of problem met: lengths that cannot be held, then numbers of parts, then planes out of order. */
    List<SheetProblem> problems() {
        lengthsAreWholeNanometres();
        if (problems.isEmpty()) {
            theNumbersAreTheTrains();
        }
        if (problems.isEmpty()) {
            frontEndsLieBeforeRearEnds();
        }
        if (problems.isEmpty()) {
            gearsOfOneArborDoNotOverlap();
        }
        return List.copyOf(problems);
    }

    private void lengthsAreWholeNanometres() {
        for (int arbor = 0; arbor < sheet.arbors().size(); arbor++) {
            whole("/arbors/" + arbor, sheet.arbors().get(arbor));
        }
        whole("/pallets", sheet.pallets());
        sheet.minuteArbor().ifPresent(place -> whole("/minuteArbor", place));
        whole("/frameCorner", sheet.frameCorner());
        spans().forEach(named -> {
            whole(named.pointer() + "/from", named.entry().from());
            whole(named.pointer() + "/to", named.entry().to());
        });
        whole("/planes/frontPlate", sheet.planes().frontPlate());
        whole("/planes/depth", sheet.planes().depth());
    }

    private void whole(String pointer, PlaceEntry place) {
        whole(pointer + "/x", place.x());
        whole(pointer + "/y", place.y());
    }

    private void whole(String pointer, Quantity length) {
        if (!LayoutSheet.isWholeNanometres(length)) {
            problems.add(SheetProblem.of(
                    pointer,
                    length,
                    "a length must be a whole number of nanometres",
                    "write it in mm with at most six decimals"));
        }
    }

    private void theNumbersAreTheTrains() {
        int meshes = need.parts().meshes().size();
        boolean motion = need.parts().motion().isPresent();
        sameCount("/arbors", "places of arbors", sheet.arbors().size(), meshes + 1);
        sameCount("/planes/meshes", "planes of meshes", sheet.planes().meshes().size(), meshes);
        sameCount("/planes/motionWork", "planes", sheet.planes().motionWork().size(), motion ? 2 : 0);
        sameCount("/minuteArbor", "places", sheet.minuteArbor().isPresent() ? 1 : 0, motion ? 1 : 0);
    }

    private void sameCount(String pointer, String noun, int found, int asked) {
        if (found != asked) {
            problems.add(new SheetProblem(
                    pointer,
                    found == 0 ? SheetProblem.NOTHING : "%d %s".formatted(found, noun),
                    "the train and its brief ask for %d here".formatted(asked),
                    "take the train that was placed, or "
                            + (found < asked ? "add the missing ones" : "leave some out")));
        }
    }

    private void frontEndsLieBeforeRearEnds() {
        for (Named named : spans()) {
            if (named.entry().to().compareTo(named.entry().from()) < 0) {
                problems.add(SheetProblem.of(
                        named.pointer() + "/to",
                        named.entry().to(),
                        "the front end must not lie behind the rear end (%s)"
                                .formatted(named.entry().from().text()),
                        "exchange the two"));
            }
        }
    }

    /** Wheel and pinion of one arbor are one part, so their planes leave no choice but order. */
    private void gearsOfOneArborDoNotOverlap() {
        List<Named> gears = gears();
        for (int arbor = 1; arbor < gears.size(); arbor++) {
            Span pinion = gears.get(arbor - 1).entry().span();
            Span wheel = gears.get(arbor).entry().span();
            if (pinion.gapTo(wheel) < 0) {
                problems.add(SheetProblem.of(
                        gears.get(arbor).pointer() + "/from",
                        gears.get(arbor).entry().from(),
                        "the planes of pinion and wheel of arbor %d must not overlap".formatted(arbor + 1),
                        "move one of them before or behind the other"));
            }
        }
    }

    /** A range and where it stands. */
    private record Named(String pointer, SpanEntry entry) {}

    private List<Named> gears() {
        List<Named> gears = list("/planes/meshes/", sheet.planes().meshes());
        gears.add(new Named("/planes/escapement", sheet.planes().escapement()));
        return gears;
    }

    private List<Named> spans() {
        List<Named> spans = gears();
        spans.add(new Named("/planes/drum", sheet.planes().drum()));
        spans.addAll(list("/planes/motionWork/", sheet.planes().motionWork()));
        return spans;
    }

    private static List<Named> list(String pointer, List<SpanEntry> entries) {
        List<Named> named = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            named.add(new Named(pointer + i, entries.get(i)));
        }
        return named;
    }
}
