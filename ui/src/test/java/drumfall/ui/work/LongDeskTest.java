// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class LongDeskTest {
    private final BlockingQueue<Runnable> posted = new LinkedBlockingQueue<>();
    private final List<String> told = new ArrayList<>();

    private void next() throws InterruptedException {
        Runnable task = posted.poll(60, TimeUnit.SECONDS);
        assertThat(task).isNotNull();
        task.run();
    }

    private void start(LongDesk desk, String name, CountDownLatch begun) {
        desk.start(
                turn -> {
                    turn.tell(() -> told.add(name + " began"));
                    begun.countDown();
                    while (!turn.cancelled()) {
                        Thread.onSpinWait();
                    }
                    turn.tell(() -> told.add(name + " ended"));
                },
                fault -> told.add(name + " broke"));
    }

    @Test
    void a_job_tells_while_it_goes_on_and_a_stopped_one_still_tells_what_it_has() throws InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        try (LongDesk desk = new LongDesk(posted::add, "test")) {
            start(desk, "job", begun);
            begun.await();
            next();
            assertThat(told).containsExactly("job began");
            desk.stop();
            next();
            assertThat(told).containsExactly("job began", "job ended");
        }
    }

    @Test
    void an_overtaken_job_ends_and_is_silenced() throws InterruptedException {
        CountDownLatch first = new CountDownLatch(1);
        CountDownLatch second = new CountDownLatch(1);
        try (LongDesk desk = new LongDesk(posted::add, "test")) {
            start(desk, "first", first);
            first.await();
            start(desk, "second", second);
            second.await();
            while (told.isEmpty()) {
                next();
            }
            assertThat(told).containsExactly("second began");
        }
    }

    @Test
    void a_broken_job_is_told_and_the_next_one_is_done() throws InterruptedException {
        try (LongDesk desk = new LongDesk(posted::add, "test")) {
            desk.start(
                    turn -> {
                        throw new IllegalStateException("on purpose");
                    },
                    fault -> told.add(fault.getMessage()));
            next();
            desk.start(turn -> turn.tell(() -> told.add("next")), fault -> told.add("broke"));
            next();
            assertThat(told).containsExactly("on purpose", "next");
        }
    }

    @Test
    void a_closed_desk_tells_nothing_more() throws InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        try (LongDesk desk = new LongDesk(posted::add, "test")) {
            start(desk, "late", begun);
            begun.await();
        }
        next();
        next();
        assertThat(told).isEmpty();
    }
}
