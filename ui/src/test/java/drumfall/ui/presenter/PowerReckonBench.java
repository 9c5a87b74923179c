// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.ui.presenter.MeshSetting.Travel;
import drumfall.ui.presenter.PowerSetting.Dial;
import java.util.Arrays;
import java.util.Locale;

/** Times what the sheet of the power reckons at each place of its dials, and the figures of a chosen train. Prints a line a figure. */
public final class PowerReckonBench {
    private static final int PLACES = 200;
    private static final double NINETY_FIVE = 0.95;

    private PowerReckonBench() {}

    /**
     * Prints milliseconds: the first place, the median and the 95th percentile of the others.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        Brief brief = BundledBriefs.demo();
        Rating rating = new TrainRater(brief).rate(MeshTrains.train());
        for (int round = 1; round <= 2; round++) {
            for (Dial dial : Dial.values()) {
                turn(brief, rating, dial);
            }
            measured("figures of a chosen train", i -> {
                TrainCards cards = new TrainCards(rating, brief, UnitSystem.METRIC);
                for (Figure figure : Figure.values()) {
                    cards.value(figure);
                }
            });
        }
    }

    private static void turn(Brief brief, Rating rating, Dial dial) {
        PowerReckoner reckoner = new PowerReckoner(brief, rating);
        PowerSetting setting = PowerSetting.middle(brief, rating);
        Travel travel = PowerSetting.travel(dial, brief, rating);
        measured("dial " + dial, i -> {
            // To and fro over the whole travel, so that no place is asked for twice running.
            double share = (i * 0.381966) % 1;
            reckoner.picture(setting.with(dial, travel.least() + share * (travel.most() - travel.least())));
        });
    }

    private interface Step {
        void at(int place);
    }

    private static void measured(String name, Step step) {
        double[] milliseconds = new double[PLACES];
        for (int i = 0; i < PLACES; i++) {
            long start = System.nanoTime();
            step.at(i);
            milliseconds[i] = (System.nanoTime() - start) / 1e6;
        }
        double first = milliseconds[0];
        Arrays.sort(milliseconds);
        System.out.printf(
                Locale.ROOT,
                "%-26s first %.2f ms, median %.2f ms, 95 %% within %.2f ms%n",
                name,
                first,
                milliseconds[PLACES / 2],
                milliseconds[(int) (NINETY_FIVE * PLACES)]);
    }
}
