// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.search.Clash;
import drumfall.solver.search.SearchSettings;
import java.util.List;
import java.util.Optional;

/**
 * What the front's place shows: its heading, and in the designed states without trains one sentence and the next step.
 *
 * @param body what fills the place
 * @param heading how many trains there are and how much is proved
 * @param sentence what is the case, where no trains are shown; empty otherwise
 * @param next what to do about it; empty if nothing
 * @param clash the clashing demands in the brief's words
 * @param earlier whether what is shown answers an earlier brief
 * @param found trains found for the new brief that are not shown yet
 */
public record FrontView(
        Body body, String heading, String sentence, String next, List<BriefLink> clash, boolean earlier, int found) {
    /** What fills the front's place. */
    public enum Body {
        /** Scatter and table. */
        TRAINS,
        /** Nothing found yet, the search runs. */
        BUSY,
        /** The brief is not in order and there is nothing earlier to show. */
        EMPTY,
        /** It is proved that there is no train. */
        NO_TRAIN,
        /** The search broke down with nothing found. */
        FAILED
    }

    /** Copies the list. */
    public FrontView {
        clash = List.copyOf(clash);
    }

    /** The view of a workspace's front. */
    public static FrontView of(Workspace workspace) {
        return workspace.front().map(front -> of(front, workspace)).orElseGet(() -> without(workspace));
    }

    private static FrontView without(Workspace workspace) {
        if (workspace.search().running()) {
            return plain(Body.BUSY, Texts.of("front.busy"), Texts.of("front.busy.next"));
        }
        int problems = workspace.draft().problems().size();
        return problems > 0
                ? plain(Body.EMPTY, counted("front.refused", problems), Texts.of("front.refused.next"))
                : plain(Body.EMPTY, Texts.of("front.empty"), Texts.of("front.empty.next"));
    }

    private static FrontView plain(Body body, String sentence, String next) {
        return new FrontView(body, Texts.of("front.heading"), sentence, next, List.of(), false, 0);
    }

    private static FrontView of(Front front, Workspace workspace) {
        boolean earlier = workspace.frontIsEarlier();
        int found = earlier ? workspace.search().found() : 0;
        String heading =
                counted("front." + front.standing().name(), front.ratings().size());
        if (front.standing() == Front.Standing.NO_TRAIN) {
            return noTrain(front, heading, earlier, found);
        }
        if (front.ratings().isEmpty()) {
            boolean failed = front.standing() == Front.Standing.FAILED;
            String key = failed ? "front.failed" : "front.stopped";
            return new FrontView(
                    failed ? Body.FAILED : Body.EMPTY,
                    heading,
                    Texts.of(key),
                    Texts.of(key + ".next"),
                    List.of(),
                    earlier,
                    found);
        }
        String steps =
                front.stepsTimes() == 1 ? "" : Texts.of("front.steps", SearchSettings.MOST_TRAINS, front.stepsTimes());
        return new FrontView(Body.TRAINS, heading, steps, "", List.of(), earlier, found);
    }

    private static String counted(String key, int count) {
        return count == 1 && Texts.has(key + ".one") ? Texts.of(key + ".one") : Texts.of(key, count);
    }

    private static FrontView noTrain(Front front, String heading, boolean earlier, int found) {
        Optional<Clash> clash = front.clash();
        List<BriefLink> demands = clash.map(Clash::demands).orElse(List.of()).stream()
                .map(held -> new BriefLink(DemandMarks.words(held, front.brief()), held.pointer()))
                .toList();
        String key = demands.isEmpty() ? "front.none.choices" : demands.size() == 1 ? "front.none.one" : "front.none";
        boolean smallest = clash.map(Clash::smallest).orElse(false);
        String next = Texts.of(smallest ? key + ".next" : "front.none.unproved");
        return new FrontView(Body.NO_TRAIN, heading, Texts.of(key), next, demands, earlier, found);
    }
}
