// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.explain.Clashes;
import drumfall.solver.explain.MinimalClash;
import drumfall.solver.explain.Nearest;
import drumfall.solver.quantity.UnitSystem;
import drumfall.ui.wording.DemandWording;
import drumfall.ui.wording.EasingWording;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Why a brief has no train, as it is shown.
 *
 * @param stage how far the explanation is
 * @param doing what is being done, or that it ended early; empty if there is nothing to say
 * @param done share of it that is done, from 0 to 1; 0 if that is not known
 * @param summary how many clashes there are and how far that is proved; empty while none is known
 * @param clashes the clashes
 * @param offers values of single figures that let a train exist, in the order in which they were found
 * @param single what introduces the offers, or that there are none; empty while nothing is known
 * @param others what other single figures do
 */
public record ReasonsView(
        Inquiry stage,
        String doing,
        double done,
        String summary,
        List<Group> clashes,
        List<Offer> offers,
        String single,
        List<String> others) {
    /**
     * A clash.
     *
     * @param heading its number
     * @param demands its demands
     */
    public record Group(String heading, List<BriefLink> demands) {
        /** Copies the list. */
        public Group {
            demands = List.copyOf(demands);
        }
    }

    /** Copies the lists. */
    public ReasonsView {
        clashes = List.copyOf(clashes);
        offers = List.copyOf(offers);
        others = List.copyOf(others);
    }

    static ReasonsView of(Reasons reasons, UnitSystem units) {
        Clashes clashes = reasons.clashes();
        DemandWording wording = new DemandWording(reasons.brief(), units);
        List<Offer> offers = reasons.nearest().stream()
                .flatMap(nearest -> Offer.of(nearest).stream())
                .toList();
        return new ReasonsView(
                reasons.stage(),
                doing(reasons),
                reasons.listed() && reasons.figures() > 0
                        ? (double) reasons.nearest().size() / reasons.figures()
                        : 0,
                clashes.list().isEmpty() ? "" : String.join(" ", wording.lines(clashes)),
                groups(reasons, wording),
                offers,
                single(reasons, offers),
                others(reasons.nearest()));
    }

    private static String doing(Reasons reasons) {
        return switch (reasons.stage()) {
            case BUSY ->
                reasons.listed()
                        ? Texts.of("reasons.easing", reasons.nearest().size(), reasons.figures())
                        : Texts.of("reasons.clashing", reasons.clashes().list().size());
            case STOPPED -> Texts.of("reasons.stopped");
            case FAILED -> Texts.of("reasons.failed");
            case UNASKED, DONE -> "";
        };
    }

    private static List<Group> groups(Reasons reasons, DemandWording wording) {
        List<MinimalClash> list = reasons.clashes().list();
        return IntStream.range(0, list.size())
                .filter(i -> !list.get(i).demands().isEmpty())
                .mapToObj(i -> new Group(
                        wording.heading(i + 1, list.get(i)),
                        list.get(i).demands().stream()
                                .map(held -> new BriefLink(DemandMarks.words(held, reasons.brief()), held.pointer()))
                                .toList()))
                .toList();
    }

    private static String single(Reasons reasons, List<Offer> offers) {
        if (!offers.isEmpty()) {
            return Texts.of("reasons.single");
        }
        return reasons.stage() == Inquiry.DONE ? Texts.of("reasons.single.none") : "";
    }

    /** Figures that a clash stands without are told together, each other one by itself. */
    private static List<String> others(List<Nearest> nearest) {
        List<String> lines = new ArrayList<>();
        Map<Integer, List<String>> standing = new TreeMap<>();
        for (Nearest found : nearest) {
            if (found.standing().isPresent()) {
                standing.computeIfAbsent(found.standing().getAsInt(), clash -> new ArrayList<>())
                        .add(EasingWording.name(found.easing()));
            } else if (Offer.of(found).isEmpty()) {
                lines.add(EasingWording.line(found));
            }
        }
        standing.forEach((clash, names) ->
                lines.add(Texts.of("reasons.standing", clash + 1, names.stream().collect(Collectors.joining("; ")))));
        return lines;
    }
}
