// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import drumfall.ui.presenter.MeshSetting.Travel;
import drumfall.ui.presenter.PowerFindings;
import drumfall.ui.presenter.PowerSetting.Dial;
import drumfall.ui.presenter.PowerSheet;
import java.awt.EventQueue;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import javax.swing.AbstractButton;
import javax.swing.MenuElement;
import javax.swing.RepaintManager;

/**
 * Times the dials of the power in the window, on a real display: from the turn of a dial until the sheet is painted anew,
 * while savings are still being reckoned and afterwards. Prints a line a dial; run it under {@code xvfb-run} from the root
 * after {@code mvn test-compile}.
 */
public final class PowerDialBench {
    private static final int TURNS = 300;
    private static final double NINETY_FIVE = 0.95;

    private PowerDialBench() {}

    /**
     * Runs the measurements.
     *
     * @param arguments none
     * @throws Exception if the window cannot be made
     */
    public static void main(String[] arguments) throws Exception {
        WindowProgram[] program = new WindowProgram[1];
        EventQueue.invokeAndWait(() -> {
            program[0] = WindowProgram.made(WindowProgram.Start.usual());
            program[0].window().setVisible(true);
            program[0].workspace().solve();
        });
        boolean[] running = {true};
        while (running[0]) {
            TimeUnit.MILLISECONDS.sleep(50);
            EventQueue.invokeAndWait(
                    () -> running[0] = program[0].workspace().search().running());
        }
        EventQueue.invokeAndWait(() -> item(program[0].window().getJMenuBar()).doClick());
        PowerSheet sheet = program[0].power();
        until(() -> sheet.state().picture().isPresent());
        for (Dial dial : Dial.values()) {
            turn(sheet, dial, "while savings are reckoned");
        }
        until(() -> sheet.findings().found().isPresent());
        for (Dial dial : Dial.values()) {
            turn(sheet, dial, "afterwards");
        }
        EventQueue.invokeAndWait(() -> program[0].workspace().solve());
        for (Dial dial : Dial.values()) {
            turn(sheet, dial, "while trains are searched for");
        }
        System.exit(0);
    }

    private static void turn(PowerSheet sheet, Dial dial, String when) throws Exception {
        Travel travel = sheet.travel(dial).orElseThrow();
        double[] milliseconds = new double[TURNS];
        for (int i = 0; i < TURNS; i++) {
            double at = travel.least() + (0.3 + 0.6 * ((i * 0.381966) % 1)) * (travel.most() - travel.least());
            long start = System.nanoTime();
            EventQueue.invokeLater(() -> sheet.set(dial, at));
            until(() -> sheet.state()
                    .picture()
                    .filter(picture -> picture.setting().at(dial) == at)
                    .isPresent());
            EventQueue.invokeAndWait(() -> RepaintManager.currentManager(null).paintDirtyRegions());
            milliseconds[i] = (System.nanoTime() - start) / 1e6;
        }
        EventQueue.invokeAndWait(sheet::reset);
        boolean still = sheet.findings() instanceof PowerFindings.Busy;
        Arrays.sort(milliseconds);
        System.out.printf(
                Locale.ROOT,
                "%s %s%s: median %.1f ms, 95 %% within %.1f ms%n",
                dial,
                when,
                still ? " (still)" : "",
                milliseconds[TURNS / 2],
                milliseconds[(int) (NINETY_FIVE * TURNS)]);
    }

    private static AbstractButton item(MenuElement menu) {
        if ("command.powersheet".equals(menu.getComponent().getName())) {
            return (AbstractButton) menu;
        }
        for (MenuElement inside : menu.getSubElements()) {
            AbstractButton found = item(inside);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private interface Claim {
        boolean holds();
    }

    private static void until(Claim claim) throws Exception {
        boolean[] holds = {false};
        while (!holds[0]) {
            EventQueue.invokeAndWait(() -> holds[0] = claim.holds());
            Thread.onSpinWait();
        }
    }
}
