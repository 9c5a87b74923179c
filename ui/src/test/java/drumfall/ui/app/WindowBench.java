// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import drumfall.solver.brief.MeshPlace;
import drumfall.ui.presenter.StripFigure;
import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Times the window on the demo brief, on a real display: until it stands, the longest event while it solves, edits answered
 * in the strip. Prints a line a figure; run it under {@code xvfb-run} from the root after {@code mvn test-compile}.
 */
public final class WindowBench {
    private static final AtomicLong LONGEST = new AtomicLong();

    private WindowBench() {}

    /**
     * Runs the measurements.
     *
     * @param arguments none
     * @throws Exception if the window cannot be made
     */
    public static void main(String[] arguments) throws Exception {
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(new TimedQueue());
        WindowProgram[] program = new WindowProgram[1];
        for (int round = 1; round <= 2; round++) {
            long start = System.nanoTime();
            EventQueue.invokeAndWait(() -> {
                program[0] = WindowProgram.made(WindowProgram.Start.usual());
                program[0].window().setVisible(true);
            });
            EventQueue.invokeAndWait(() -> {});
            print("window stands, round " + round, System.nanoTime() - start);
        }
        EventQueue.invokeAndWait(() -> {});
        LONGEST.set(0);
        EventQueue.invokeAndWait(() -> program[0].workspace().solve());
        while (running(program[0])) {
            Thread.sleep(50);
        }
        print("longest event while solving", LONGEST.get());
        strip(program[0]);
        System.exit(0);
    }

    private static boolean running(WindowProgram program) throws Exception {
        boolean[] running = new boolean[1];
        EventQueue.invokeAndWait(() -> running[0] = program.workspace().search().running());
        return running[0];
    }

    private static void strip(WindowProgram program) throws Exception {
        StripFigure centreWheel =
                new StripFigure(StripFigure.Kind.WHEEL, Optional.of(new MeshPlace(MeshPlace.Side.BELOW, 1)));
        LONGEST.set(0);
        for (int count = 60; count < 80; count++) {
            String typed = Integer.toString(count);
            EventQueue.invokeAndWait(() -> program.workspace().tryCount(centreWheel, typed));
            EventQueue.invokeAndWait(() -> {});
        }
        print("longest event over 20 strip edits", LONGEST.get());
    }

    private static void print(String what, long nanoseconds) {
        System.out.printf("%-36s %8.1f ms%n", what, nanoseconds / 1e6);
    }

    private static final class TimedQueue extends EventQueue {
        @Override
        protected void dispatchEvent(AWTEvent event) {
            long start = System.nanoTime();
            super.dispatchEvent(event);
            LONGEST.accumulateAndGet(System.nanoTime() - start, Math::max);
        }
    }
}
