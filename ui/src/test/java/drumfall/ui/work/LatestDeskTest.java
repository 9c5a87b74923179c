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

class LatestDeskTest {
    private final BlockingQueue<Runnable> posted = new LinkedBlockingQueue<>();
    private final List<String> told = new ArrayList<>();

    private void next() throws InterruptedException {
        Runnable task = posted.poll(60, TimeUnit.SECONDS);
        assertThat(task).isNotNull();
        task.run();
    }

    private void ask(LatestDesk desk, String name, CountDownLatch begun, CountDownLatch go) {
        desk.ask(
                () -> {
                    begun.countDown();
                    waitFor(go);
                    return name;
                },
                told::add,
                fault -> told.add(name + " broke"));
    }

    private static void waitFor(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException interrupted) {
            throw new AssertionError("The test was interrupted.", interrupted);
        }
    }

    @Test
    void an_overtaken_job_is_silenced_and_one_that_waits_is_never_begun() throws InterruptedException {
        CountDownLatch go = new CountDownLatch(1);
        CountDownLatch first = new CountDownLatch(1);
        CountDownLatch second = new CountDownLatch(1);
        try (LatestDesk desk = new LatestDesk(posted::add, "test")) {
            ask(desk, "first", first, go);
            first.await();
            ask(desk, "second", second, go);
            ask(desk, "third", new CountDownLatch(1), go);
            go.countDown();
            while (told.isEmpty()) {
                next();
            }
            assertThat(told).containsExactly("third");
            assertThat(second.getCount()).isEqualTo(1);
        }
    }

    @Test
    void a_broken_job_is_told_and_the_next_one_is_done() throws InterruptedException {
        try (LatestDesk desk = new LatestDesk(posted::add, "test")) {
            desk.<String>ask(
                    () -> {
                        throw new IllegalStateException("on purpose");
                    },
                    told::add,
                    fault -> told.add(fault.getMessage()));
            next();
            ask(desk, "next", new CountDownLatch(1), new CountDownLatch(0));
            next();
            assertThat(told).containsExactly("on purpose", "next");
        }
    }

    @Test
    void a_closed_desk_tells_nothing_more() throws InterruptedException {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        try (LatestDesk desk = new LatestDesk(posted::add, "test")) {
            ask(desk, "late", begun, go);
            begun.await();
        }
        go.countDown();
        next();
        assertThat(told).isEmpty();
    }
}
