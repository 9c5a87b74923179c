// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power.books;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.power.Movement;
import drumfall.solver.power.WeightFigure;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.samples.HandClock;
import drumfall.solver.samples.Trains;
import drumfall.solver.train.DrumRun;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.Train;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PowerBooksTest {
    private static final int SAMPLES = "full".equals(System.getProperty("drumfall.samples")) ? 2_000 : 100;

    // 1e-9 as asked of the books; each is a sum of some twenty products, so rounding is a few parts in 1e15, and the
    // arc
    // is found to the last digit.
    private static final double BALANCE = 1e-9;

    @Test
    void the_books_of_random_trains_balance() {
        Brief brief = BundledBriefs.demo();
        TrainRater rater = new TrainRater(brief);
        Random random = new Random(21);
        int kept = 0;
        for (int i = 0; i < SAMPLES; i++) {
            LoadedClock clock = LoadedClock.of(
                    rater.movement(),
                    Trains.random(brief, random),
                    brief.hands().torque().si());
            double least = clock.leastWeight();
            if (Double.isInfinite(least)) {
                continue;
            }
            kept++;
            PowerBooks books = new BookKeeper(clock).under(least * (1 + random.nextDouble()));

            assertThat(books.imbalance()).as("%s", clock.train()).isCloseTo(0, within(BALANCE));
            assertThat(books.entries()).allMatch(entry -> entry.power() >= 0);
        }
        assertThat(kept).isGreaterThan(SAMPLES / 4);
    }

    // The same walk written twice: per role in the walk, per arbor here. 1e-12: some twenty operations each.
    @Test
    void a_loaded_clock_needs_the_weights_of_the_walk() {
        Brief brief = BundledBriefs.demo();
        TrainRater rater = new TrainRater(brief);
        Random random = new Random(22);
        for (int i = 0; i < SAMPLES; i++) {
            Train train = Trains.random(brief, random);
            WeightFigure figure = rater.walk().weigh(train);
            LoadedClock clock = LoadedClock.of(rater.movement(), train, 0);
            if (Double.isInfinite(figure.leastWeight())) {
                assertThat(clock.leastWeight()).isInfinite();
                continue;
            }
            assertThat(clock.runningWeight()).isCloseTo(figure.running().weight(), withinPercentage(1e-10));
            assertThat(clock.bindingWeight()).isCloseTo(figure.binding().weight(), withinPercentage(1e-10));
        }
    }

    /*
     * The way down of one clock under 9 kg, worked apart from the program.
     *
     * Line: 9 · 9.80665 = 88.260 N at 21 mm: 1.85346 N m on a drum that turns in 12 h, 1.45444e-4 rad/s: 269.574 µW.
     * Masses as in the test of the parts: 34.221 and 17.052 g weigh 0.3356 and 0.1672 N on the drum arbor.
     * Drum arbor: bearings 3e-6 m; (1.85346 (1 - 3e-6/0.021) - 3e-6 · 0.3356 - 3e-6 · 0.1672 - 4e-5) / (1 + 3e-6/0.05638)
     * = 1.853052 N m handed on, 0.0589 µW rubbed away. First mesh, work mean 0.9567: 11.670 µW lost, 0.147735 N m given.
     * Centre: slope 0.2 · 1.5 mm = 3e-4 m; pinion arm 4.6985 mm, wheel arm 30.070 mm; hands 1e-3 N m: 0.135920 N m handed on;
     * 20.620 µW taken, of which hands 1e-3 · 2π/3600 = 1.7453 µW. Second mesh 0.9552: 10.628 µW, 0.0162289 N m given.
     * Third arbor: slope 2e-4 m: 0.0152422 N m handed on, 13.777 µW. Third mesh 0.9549: 9.5982 µW, 1.94063e-3 N m given.
     * Escape arbor: slope 1.5e-4 m, wheel arm 30 mm: M_e = 1.84361e-3 N m, 10.160 µW.
     * A beat of 1 s: drop M_e · 1.5° = 48.266 µW; impulse M_e · 4.5° (1 - 0.671202) = 47.609; inertia 3 % of the rest 2.9156.
     * The arc is where M_e (0.0511346 - 0.2 (2 A - 4°)) = 2 A · 2e-6 + π E(A)/1000: A = 3.7816°; locking 22.930 µW, pallet
     * arbor 0.26400, pendulum 71.078, 26.4 % of the weight's power. 1 %: means of the meshes are rounded to four figures.
     */
    @Test
    void the_books_of_one_clock_are_those_worked_by_hand() {
        PowerBooks books = new BookKeeper(clock(1)).under(9);

        assertThat(books.weightPower()).isCloseTo(269.574e-6, withinPercentage(0.001));
        assertWorked(books, Place.BORES, 0.0589, 18.874, 13.777, 10.160);
        assertWorked(books, Place.HANDS, 1.7453);
        assertWorked(books, Place.MESH, 11.670, 10.628, 9.5982);
        assertWorked(books, Place.DROP, 48.266);
        assertWorked(books, Place.IMPULSE, 47.609);
        assertWorked(books, Place.INERTIA, 2.9156);
        assertWorked(books, Place.LOCKING, 22.930);
        assertWorked(books, Place.PALLET_ARBOR, 0.26400);
        assertWorked(books, Place.PENDULUM, 71.078);
        assertThat(Math.toDegrees(books.semiArc())).isCloseTo(3.7816, withinPercentage(1));
        assertThat(books.handedOn().get(3)).isCloseTo(1.84361e-3 * 2 * Math.PI / 60, withinPercentage(1));
    }

    private static void assertWorked(PowerBooks books, Place place, double... worked) {
        double[] kept = microwatts(books, place);
        assertThat(kept).hasSize(worked.length);
        for (int i = 0; i < worked.length; i++) {
            assertThat(kept[i]).as("%s %d", place, i).isCloseTo(worked[i], withinPercentage(1));
        }
    }

    private static double[] microwatts(PowerBooks books, Place place) {
        return books.entries().stream()
                .filter(entry -> entry.place() == place)
                .mapToDouble(entry -> entry.power() * 1e6)
                .toArray();
    }

    // What goes down a train comes up again: tension asked for a torque, torque found under that tension.
    @Test
    void the_way_down_is_the_way_up_turned_round() {
        LoadedTrain train = clock(1).running();
        double tension = train.tensionFor(2e-3, mesh -> mesh.curve().mean());
        var torques = train.under(tension, mesh -> mesh.curve().mean());

        assertThat(torques.get(3).out()).isCloseTo(2e-3, withinPercentage(1e-10));
    }

    // Ball, Experimental Mechanics, lecture VI § 181: 15 foot-pounds put in for 14 got out of a pulley, so 1 part in 29
    // of
    // a weight's work on two falls of 14 and 15 is the pulley's.
    @Test
    void a_pulley_takes_its_part_of_the_weights_power() {
        Movement movement = HandClock.movement();
        Movement ball = new Movement(
                movement.parts(),
                movement.teeth(),
                movement.pendulum(),
                movement.escapement(),
                movement.reserveArc(),
                movement.running(),
                movement.starting(),
                movement.bindingReserve(),
                14.0 / 15);
        PowerBooks books = new BookKeeper(LoadedClock.of(ball, HandClock.train(2), HandClock.HANDS)).under(17);

        assertThat(books.at(Place.PULLEY) / books.weightPower()).isCloseTo(1.0 / 29, within(1e-12));
        assertThat(books.imbalance()).isCloseTo(0, within(BALANCE));
    }

    /*
     * Published energy budgets of whole clocks. The weight's power is W g F over the duration whatever the drum: the drum
     * only has to turn at the rate that lets F last so long.
     *
     * Antiquarian Horological Society, O. Cooke, "Time and efficiency": longcase of the 17th century, 12 lb (5.44 kg)
     * falling about 5 ft in 8 days, "about 1/8500 W". 0.2 %: 1/8500 is rounded to two figures, 1/8499 by the sum.
     *
     * Beckett, A Rudimentary Treatise on Clocks, Watches and Bells, 8th ed. 1903, p. 253: each beat of two seconds at
     * Westminster lifts an ounce through 0.9 in, "about 200 pound-feet" a day: 202.5 ft lb, 3.178 mW. An ounce as a weight
     * that falls 43200 times 0.9 in in a day is the same budget.
     *
     * rfcafe.com, "Potential energy of a pendulum clock": three weights of 5 lb, 2.31 mWh a day, 96.3 µW. Three times
     * 2.268 kg through 0.1247 m a day; the page's fall is inferred from its energy, so this row checks units alone.
     */
    @ParameterizedTest
    @CsvSource({
        "5.44, 1.524, 8, 1.17647e-4, 0.2",
        "0.0283495, 987.552, 1, 3.178e-3, 0.1",
        "6.80389, 0.12463, 1, 9.625e-5, 0.1"
    })
    void published_clocks_have_their_published_power(
            double weight, double fall, double days, double watts, double percent) {
        Movement movement = HandClock.movement();
        double turns = new DrumRun(
                        BigFraction.from(fall), BigFraction.of(40, 1000), BigFraction.of(2, 1000), Reeving.SINGLE)
                .turns();
        double speed = 2 * Math.PI * turns / (days * 86_400);
        double power = movement.tensionUnder(weight, Reeving.SINGLE) * movement.lineArm(0.040) * speed;

        assertThat(power).isCloseTo(watts, withinPercentage(percent));
    }

    @Test
    void every_place_has_its_entry_and_shares_add_up() {
        PowerBooks books = new BookKeeper(clock(1)).under(9);

        assertThat(books.entries()).extracting(BookEntry::place).doesNotContain(Place.PULLEY);
        assertThat(books.entries().stream().filter(entry -> entry.place() == Place.BORES))
                .hasSize(4);
        assertThat(books.entries().stream().filter(entry -> entry.place() == Place.MESH))
                .hasSize(3);
        assertThat(books.entries().stream()
                        .filter(entry -> entry.place().friction())
                        .mapToDouble(books::shareOfFriction)
                        .sum())
                .isCloseTo(1, within(1e-12));
        assertThat(books.at(Place.HANDS)).isCloseTo(HandClock.HANDS * 2 * Math.PI / 3600, within(1e-15));
    }

    @Test
    void more_weight_keeps_more_arc_up_to_the_arc_that_none_exceeds() {
        BookKeeper keeper = new BookKeeper(clock(1));
        double saturation = HandClock.movement().escapement().with(30).saturationArc();
        double before = 0;
        for (double weight = 7.5; weight < 1e4; weight *= 1.5) {
            double arc = keeper.arcUnder(weight).orElseThrow();
            assertThat(arc).isGreaterThan(before).isLessThan(saturation);
            before = arc;
        }
        assertThat(before).isCloseTo(saturation, withinPercentage(1));
    }

    @Test
    void a_weight_under_the_least_is_refused_with_the_least() {
        BookKeeper keeper = new BookKeeper(clock(1));
        double least = clock(1).leastWeight();

        assertThatThrownBy(() -> keeper.under(least * 0.99))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must be at least the least running weight")
                .hasMessageContaining("Maybe hang %.4g kg".formatted(least));
        assertThat(keeper.under(least).imbalance()).isCloseTo(0, within(BALANCE));
    }

    @Test
    void a_weight_too_light_for_the_pallets_keeps_no_arc() {
        assertThat(new BookKeeper(clock(1)).arcUnder(0.5)).isEmpty();
    }

    // The mean of a mesh is above what the pendulum feels of it at its worst, by a few percent at most.
    @Test
    void at_the_least_weight_the_mean_arc_is_a_little_more_than_the_arc_asked() {
        LoadedClock clock = clock(1);
        double asked = clock.need().semiArc();

        assertThat(new BookKeeper(clock).arcUnder(clock.runningWeight()).orElseThrow())
                .isBetween(asked, asked * 1.05);
    }

    private static LoadedClock clock(int falls) {
        return LoadedClock.of(HandClock.movement(), HandClock.train(falls), HandClock.HANDS);
    }
}
