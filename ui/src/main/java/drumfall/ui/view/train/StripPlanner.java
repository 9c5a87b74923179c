// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import drumfall.solver.rating.Rating;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.StripFigure.Kind;
import drumfall.ui.presenter.TrainStripContent;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Computes the plan of a strip. */
final class StripPlanner {
    private static final double MESSAGE = 11.5;

    private final StripTerms terms;
    private final StripFrame frame;

    private StripPlanner(StripTerms terms, StripFrame frame) {
        this.terms = terms;
        this.frame = frame;
    }

    /**
     * The plan of a content.
     *
     * @param content what is shown
     * @param chosen its chosen train
     * @param size room, px
     * @param unit a thirteenth of the font size, px
     * @param text measures
     */
    static StripPlan plan(TrainStripContent content, Rating chosen, Dimension size, double unit, TabularText text) {
        StripTerms terms = new StripTerms(content, chosen, text);
        TrainFaces faces = TrainFaces.of(terms.train(), content.brief());
        boolean distances = terms.values().keySet().stream().anyMatch(figure -> figure.kind() == Kind.DISTANCE);
        return new StripPlanner(terms, StripFrame.of(size.width, size.height, unit, faces, distances)).plan();
    }

    private StripPlan plan() {
        StripCounts counts = new StripCounts(terms, frame);
        StripSides sides = new StripSides(terms, frame);
        StripBand band = new StripBand(terms, frame);
        List<StripSpot> spots = new ArrayList<>(sides.left());
        spots.addAll(counts.spots());
        spots.addAll(sides.right());
        spots.addAll(band.spots());
        List<StripPlan.Note> notes = new ArrayList<>(counts.notes());
        notes.addAll(sides.notes());
        notes.addAll(band.notes());
        notes.addAll(messages());
        Train train = terms.train();
        return new StripPlan(
                frame,
                train.meshesAbove(),
                train.reeving().falls(),
                train.going().lineOnTheRight(),
                band.pieces(),
                counts.spans(),
                sides.gauges(),
                notes,
                spots,
                terms.content().highlight());
    }

    private List<StripPlan.Note> messages() {
        List<StripPlan.Note> notes = new ArrayList<>();
        double room = frame.width() - 28 * frame.unit();
        if (terms.content().asOfEarlierBrief()) {
            room -= toTheRight(TrainText.of("stale"), room, StripPlan.Tone.LIGHTER, notes);
        }
        if (terms.content().trial().isPresent()) {
            room -= toTheRight(TrainText.of("trial"), room, StripPlan.Tone.COMPARED, notes);
        }
        List<String> sentences = terms.missed().sentences();
        if (!sentences.isEmpty()) {
            double x = 28 * frame.unit();
            notes.add(note(fitted(sentences, room - x), x, StripPlan.Tone.MISSED));
        } else if (terms.content().standing().isPresent()) {
            double x = 14 * frame.unit();
            String words = terms.content().standing().get();
            notes.add(note(cut(words, room - x), x, StripPlan.Tone.COMPARED));
        }
        return notes;
    }

    private double toTheRight(String words, double right, StripPlan.Tone tone, List<StripPlan.Note> notes) {
        double width = terms.text().width(words, MESSAGE * frame.unit());
        notes.add(note(words, right + 14 * frame.unit() - width, tone));
        return width + 20 * frame.unit();
    }

    private StripPlan.Note note(String words, double x, StripPlan.Tone tone) {
        return new StripPlan.Note(words, x, frame.messageRow(), MESSAGE * frame.unit(), tone);
    }

    /** As many sentences as fit; the rest are counted. */
    private String fitted(List<String> sentences, double room) {
        String all = String.join("  ", sentences);
        for (int shown = sentences.size(); shown > 1 && !fits(all, room); shown--) {
            String kept = String.join("  ", sentences.subList(0, shown - 1));
            all = kept + "  " + TrainText.of("more", sentences.size() - shown + 1);
        }
        return all;
    }

    /** As much of a sentence as fits; the whole of it stands on the sheet of easing and is read aloud. */
    private String cut(String words, double room) {
        String shown = words;
        for (int end = words.length(); end > 0 && !fits(shown, room); end--) {
            shown = words.substring(0, end - 1).strip() + "…";
        }
        return shown;
    }

    private boolean fits(String words, double room) {
        return terms.text().width(words, MESSAGE * frame.unit()) <= room;
    }
}
