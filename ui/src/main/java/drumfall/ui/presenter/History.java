// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.ui.design.Design;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** The designs before and after the present one, each step with the name of what was done. */
final class History {
    /** Steps kept; a design is a few kilobytes. */
    private static final int MOST_STEPS = 500;

    private final Deque<Step> undone = new ArrayDeque<>();
    private final Deque<Step> done = new ArrayDeque<>();
    private Design present;
    private Optional<String> growing = Optional.empty();

    History(Design present) {
        this.present = present;
    }

    /**
     * A step.
     *
     * @param name what was done, in words
     * @param other the design on its far side
     */
    private record Step(String name, Design other) {}

    Design present() {
        return present;
    }

    /**
     * Makes a step.
     *
     * @param name what is done, in words
     * @param next the design after it
     * @param series steps of one series in a row count as one; empty for a step of its own
     * @return whether anything changed
     */
    boolean step(String name, Design next, Optional<String> series) {
        if (next.equals(present)) {
            return false;
        }
        boolean grows = series.isPresent() && series.equals(growing) && !done.isEmpty();
        if (!grows) {
            note(name);
        }
        undone.clear();
        growing = series;
        present = next;
        return true;
    }

    private void note(String name) {
        done.push(new Step(name, present));
        if (done.size() > MOST_STEPS) {
            done.removeLast();
        }
    }

    /** Ends a series: the next step stands alone. */
    void seal() {
        growing = Optional.empty();
    }

    /** Changes the present without a step, for what the program does of itself. */
    void replace(Design next) {
        present = next;
    }

    /** Forgets everything and begins anew. */
    void restart(Design first) {
        done.clear();
        undone.clear();
        seal();
        present = first;
    }

    boolean undo() {
        return move(done, undone);
    }

    boolean redo() {
        return move(undone, done);
    }

    private boolean move(Deque<Step> from, Deque<Step> to) {
        if (from.isEmpty()) {
            return false;
        }
        Step step = from.pop();
        to.push(new Step(step.name(), present));
        present = step.other();
        seal();
        return true;
    }

    /** What undoing would take back. */
    Optional<String> undoName() {
        return Optional.ofNullable(done.peek()).map(Step::name);
    }

    /** What redoing would do again. */
    Optional<String> redoName() {
        return Optional.ofNullable(undone.peek()).map(Step::name);
    }
}
