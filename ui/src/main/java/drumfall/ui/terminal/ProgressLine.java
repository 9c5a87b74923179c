// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.search.SearchListener;
import drumfall.solver.search.SearchProgress;
import drumfall.solver.search.SearchProgress.Stage;
import drumfall.ui.wording.FigureWording;
import drumfall.ui.wording.SearchWording;
import java.util.List;

/** Shows on one line, written over again and again and wiped at the end, how a search goes on. */
final class ProgressLine implements SearchListener, AutoCloseable {
    private static final long NANOSECONDS_BETWEEN = 200_000_000;
    private static final int PERCENT = 100;

    private final TerminalPlace place;
    private final UnitSystem units;
    private int trains;
    private int columns;
    private long shown;

    private ProgressLine(TerminalPlace place, UnitSystem units) {
        this.place = place;
        this.units = units;
        this.shown = System.nanoTime();
    }

    static ProgressLine on(TerminalPlace place, UnitSystem units) {
        return new ProgressLine(place, units);
    }

    @Override
    public void frontChanged(List<Rating> front) {
        trains = front.size();
    }

    @Override
    public void progressed(SearchProgress progress) {
        if (place.watched() && System.nanoTime() - shown > NANOSECONDS_BETWEEN) {
            shown = System.nanoTime();
            show(line(progress));
        }
    }

    private String line(SearchProgress progress) {
        String key = "progress." + progress.stage().name();
        long percent = Math.round(progress.done() * PERCENT);
        return progress.stage() == Stage.EXPLAINING
                ? Phrases.phrase(key)
                : Phrases.phrase(key, progress.meshesAbove(), progress.meshesBelow(), percent, trains)
                        + SearchWording.searched(progress, FigureWording.in(units));
    }

    private void show(String line) {
        place.err().print("\r" + line + " ".repeat(Math.max(0, columns - line.length())));
        place.err().flush();
        columns = line.length();
    }

    @Override
    public void close() {
        if (columns > 0) {
            place.err().print("\r" + " ".repeat(columns) + "\r");
            place.err().flush();
        }
    }
}
