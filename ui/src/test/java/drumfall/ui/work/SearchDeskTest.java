// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.work;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.rating.Rating;
import drumfall.solver.search.SearchOutcome;
import drumfall.solver.search.SearchProgress;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class SearchDeskTest {
    private final LinkedBlockingQueue<Runnable> posted = new LinkedBlockingQueue<>();
    private final List<String> told = new ArrayList<>();

    private final class Recorder implements SearchWatcher {
        private final String name;

        Recorder(String name) {
            this.name = name;
        }

        @Override
        public void progressed(SearchProgress progress) {
            told.add(name + " progressed " + progress.done());
        }

        @Override
        public void grew(List<Rating> front) {
            told.add(name + " grew");
        }

        @Override
        public void ended(SearchOutcome outcome) {
            told.add(name + " ended");
        }

        @Override
        public void failed(Throwable fault) {
            told.add(name + " failed");
        }
    }

    private void next() throws InterruptedException {
        Runnable task = posted.poll(60, TimeUnit.SECONDS);
        assertThat(task).isNotNull();
        task.run();
    }

    @Test
    void a_newer_search_ends_and_silences_the_earlier_one() throws InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        Searcher patient = (brief, listener, cancelled) -> {
            begun.countDown();
            while (!cancelled.getAsBoolean()) {
                Thread.onSpinWait();
            }
            return new SearchOutcome.Stopped(List.of());
        };
        try (SearchDesk desk = new SearchDesk(posted::add, patient)) {
            desk.start(BundledBriefs.demo(), new Recorder("first"));
            begun.await();
            desk.start(BundledBriefs.demo(), new Recorder("second"));
            next();
            assertThat(told).isEmpty();
            desk.stop();
            next();
            assertThat(told).containsExactly("second ended");
        }
    }

    @Test
    void what_is_told_between_two_turns_is_told_once_with_the_latest() throws InterruptedException {
        Searcher busy = (brief, listener, cancelled) -> {
            for (int i = 1; i <= 1000; i++) {
                listener.progressed(new SearchProgress(SearchProgress.Stage.JOINING, 1, 2, i / 1000.0));
                listener.frontChanged(List.of());
            }
            return new SearchOutcome.Proved(List.of());
        };
        try (SearchDesk desk = new SearchDesk(posted::add, busy)) {
            desk.start(BundledBriefs.demo(), new Recorder("it"));
            while (posted.size() < 3) {
                Thread.onSpinWait();
            }
            next();
            next();
            next();
            assertThat(told).containsExactly("it progressed 1.0", "it grew", "it ended");
        }
    }

    @Test
    void an_error_is_told_as_a_failure() throws InterruptedException {
        Searcher broken = (brief, listener, cancelled) -> {
            throw new StackOverflowError("on purpose");
        };
        try (SearchDesk desk = new SearchDesk(posted::add, broken)) {
            desk.start(BundledBriefs.demo(), new Recorder("it"));
            next();
            assertThat(told).containsExactly("it failed");
        }
    }
}
