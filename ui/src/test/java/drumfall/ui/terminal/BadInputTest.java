// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.ui.terminal.TerminalBench.Run;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BadInputTest {
    @TempDir
    Path folder;

    private TerminalBench bench;

    @BeforeEach
    void open() {
        bench = new TerminalBench(folder);
        bench.write("broken.json", "{\"format\": \"drumfall-brief\",");
        bench.write("latin.json", "");
        bench.writeEdited("unit.json", "/run/wanted", "\"5 m\"");
        bench.writeEdited("field.json", "/run/longest", "\"5 d\"");
        bench.writeEdited("order.json", "/run/wanted", "\"9 d\"");
        bench.writeEdited(
                "zero.json", "/objectives", "[{\"figure\": \"recommended-weight\", \"resolution\": \"0 %\"}]");
        bench.writeEdited("locks.json", "/locks", """
                {"meshes": [{"place": {"side": "below", "number": 1}, "wheel": 70},
                            {"place": {"side": "below", "number": 1}, "wheel": 71}]}
                """);
        bench.write("no-mesh.json", """
                {"format": "drumfall-train", "version": 1, "name": "No mesh below", "meshesAbove": 1, "falls": 1,
                 "meshes": [{"wheel": 70, "leaves": 8, "module": "1 mm"}], "drumDiameter": "30 mm", "escapeTeeth": 30}
                """);
        bench.write("sound.json", RateCommandTest.SOUND);
        bench.write("one-below.json", RateCommandTest.train("77, 9", "76, 8"));
        bench.writeEdited("low.json", "/frame/height", "\"90 mm\"");
        bench.writeEdited("loose.json", "/frame/arrangement", "\"unplaced\"");
        bench.write("newer.json", "{\"format\": \"drumfall-train\", \"version\": 9}");
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
            sovle;                                        "sovle" is one argument too many or no command. Maybe "solve" was meant.
            solve --unit metric;                          There is no option "--unit" here. Maybe "--units" was meant.
            solve @small.json extra;                      "extra" is one argument too many
            solve @none.json;                             the file none.json: there is no such file; check its name and folder.
            solve @broken.json;                           broken.json: At
            solve @latin.json;                            latin.json: At
            solve @unit.json;                             unit.json: At /run/wanted, "5 m": the unit "m" is not known
            solve @field.json;                            field.json: At /run/longest, "5 d": there is no field of that name here
            solve @order.json;                            order.json: At /run
            solve --bundled yearly-clock;                 There is no bundled brief "yearly-clock"; choose one of weekly-wall-clock
            solve @small.json --bundled desk-clock;       leave one of them out.
            solve --limit 30;                             "30" is not a time: the unit is missing.
            solve --limit -3s;                            "-3s" is less than nothing
            solve --limit;                                Missing: --limit TIME.
            solve --limit 1s --limit 2s;                  --limit TIME was given twice.
            solve --units furlong;                        "furlong" is no system of units; choose one of metric, imperial
            solve @small.json --hold falls;               "falls" does not say what is held at which value
            solve @small.json --hold pallet=3;            "pallet" is nothing that can be held
            solve @small.json --hold falls=one;           At --hold falls, "one" is no whole number
            solve @small.json --hold falls=2;             At --hold falls, 2: the falls held must be among those offered
            solve @small.json --hold below-1.wheel=90;    At --hold below-1.wheel, 90: the teeth of a wheel must be from 68 to 80
            solve @small.json --hold below-1.leaves=0;    At --hold below-1.leaves, 0: it must be at least 5
            solve @small.json --hold below-3.wheel=70;    At --hold below-3, 3: at most 2 meshes are allowed
            solve @small.json --hold above-1.module=2mm;  At --hold above-1.module, "2mm": the module must be one of those listed
            solve @small.json --hold above-1.module=1;    At --hold above-1.module, "1": the unit is missing
            solve @small.json --hold above-1.distance=45; At --hold above-1.distance, "45": the unit is missing
            solve @small.json --hold above-1.distance=2m; At --hold above-1.distance, "2m": it must be at most 1 m
            solve @small.json --hold above-1.direction=45mm; At --hold above-1.direction, "45mm": the unit "mm" is not known
            solve @small.json --hold motion-direction=up; At --hold motion-direction, "up": a number was expected
            solve @small.json --layout @a.json;           a.json says where a train stands, but none is kept; give its file with --keep-holes.
            solve @small.json --keep-holes;               Missing: --keep-holes TRAIN.json.
            solve @small.json --keep-holes @none.json;    the file none.json: there is no such file
            solve @small.json --keep-holes @no-mesh.json; no-mesh.json: At /meshesAbove
            solve @small.json --keep-holes @sound.json --layout @sound.json; At /format, "drumfall-train": the file is not in the format "drumfall-layout"
            solve @loose.json --keep-holes @sound.json;   The brief leaves arbors unplaced, so
            solve @low.json --keep-holes @sound.json;     sound.json stands in no holes that could be kept. No layout
            solve @small.json --keep-holes @one-below.json; --keep-holes: At /locks/meshesBelow, 1: the meshes below the centre must be
            why @loose.json --keep-holes @sound.json;     The brief leaves arbors unplaced, so
            solve @small.json --hold drum=29mm;           At --hold drum, "29mm": the drum may measure from "28 mm" to "32 mm"
            solve @small.json --hold escape-wheel=99999999999999999999; At --hold escape-wheel, 99999999999999999999: it must be at most 240
            rate @small.json;                             Missing: TRAIN.json.
            rate @small.json @small.json;                 At /format, "drumfall-brief": the file is not in the format "drumfall-train"
            rate @small.json @no-mesh.json;               no-mesh.json: At /meshesAbove, 1: at least one of the train's 1 meshes
            rate @small.json @newer.json;                 newer.json: At /version, 9: the file is in a newer version
            rate @small.json @sound.json --layout @none.json;     the file none.json: there is no such file; check its name and folder.
            rate @small.json @sound.json --layout @broken.json;   broken.json: At
            rate @small.json @sound.json --layout @sound.json;    At /format, "drumfall-train": the file is not in the format "drumfall-layout"
            rate @small.json @sound.json --layout;                Missing: --layout LAYOUT.json.
            rate @small.json @sound.json --layout @a.json --write-layout @b.json; leave one of them out.
            rate @small.json @sound.json --write-layout @no/layout.json;  layout.json cannot be written; check its folder
            rate @loose.json @sound.json --write-layout @layout.json;     The brief leaves the arbors unplaced, so there is nothing to write to
            ratio;                                        Missing: TARGET.
            ratio twelve;                                 "twelve" is no ratio
            ratio 1/0;                                    "1/0" divides by zero
            ratio 0;                                      The target ratio (0) must be positive.
            ratio 1e400;                                  "1e400" is no ratio
            ratio 12 --meshes 0;                          "0" is no whole number of at least 1
            ratio 12 --meshes 5;                          must lie from 1 to 4
            ratio 12 --wheels 90;                         "90" is no range of counts
            ratio 12 --wheels 90-20;                      The most count (20) must be at least the least count (90).
            ratio 12 --wheels 0-20;                       The least count (0) must be at least 1.
            ratio 12 --meshes 4 --wheels 10-900000000;    must keep the product of 4 counts below 2^63
            mesh 60;                                      Missing: LEAVES.
            mesh sixty 8;                                 "sixty" is no whole number of at least 1
            mesh 60 4;                                    An involute pinion of 4 leaves is outside 5 to 60; the nearest that works has 5.
            mesh 60 5 --form cycloidal;                   A cycloidal pinion of 5 leaves is outside 6 to 60; the nearest that works has 6.
            mesh 60 5 --form lantern;                     A lantern pinion of 5 leaves is outside 6 to 60; the nearest that works has 6.
            mesh 400 61;                                  An involute pinion of 61 leaves is outside 5 to 60; the nearest that works has 60.
            mesh 7 8;                                     A wheel of 7 teeth is outside 8, the leaves of its pinion, to 300; the nearest that works has 8.
            mesh 301 8;                                   A wheel of 301 teeth is outside 8, the leaves of its pinion, to 300; the nearest that works has 300.
            mesh 60 8 --form spiral;                      "spiral" is no form of teeth; choose one of involute, cycloidal, lantern
            mesh 60 8 --module 25mm;                      The module of 25mm is outside 0.2 mm to 20 mm; the nearest that works is 20 mm.
            mesh 60 8 --module 1;                         "1" is not a length: the unit is missing.
            mesh 60 8 --module 0.6mm;                     No involute teeth of 60/8 print and run at a module of 0.6 mm; the smallest that works is 0.75 mm.
            mesh 48 6;                                    No involute teeth of 48/6 print and run at a module of 1 mm; the smallest that works is 1.05 mm.
            mesh 60 8 --pressure-angle 40deg;             The pressure angle of 40deg is outside 12 deg to 34 deg; the nearest that works is 34 deg.
            mesh 90 12 --form cycloidal --pressure-angle 20deg; The pressure angle 20deg is for involute teeth, not cycloidal ones; leave it out.
            mesh 60 8 --friction -0.1;                    The friction of -0.1 is outside 0 to 1; the nearest that works is 0.
            mesh 60 8 --friction 0.2-1.5;                 The friction of 1.5 is outside 0 to 1; the nearest that works is 1.
            mesh 60 8 --friction 0.3-0.2;                 The friction goes from 0.3 to 0.2; write the least first.
            mesh 60 8 --thinning 0.1-3mm;                 The thinning of 3mm is outside 0 mm to 2 mm; the nearest that works is 2 mm.
            mesh 60 8 --nozzle 0mm;                       The nozzle of 0mm is outside 0.05 mm to 5 mm; the nearest that works is 0.05 mm.
            mesh 60 8 --module 20mm --centre-error 2mm;   No involute teeth of 60/8 run with a centre distance off by 2mm; the nearest that works is
            display;                                      Missing: CYCLE.
            display mars;                                 "mars" is no cycle; write moon, tide, sidereal-day or year
            display 0d;                                   The length of the cycle (0 s) must be more than 0 s.
            display 27.3furlong;                          the unit "furlong" is not known
            display 1/0;                                  "1/0" divides by zero
            display 0;                                    The length of the cycle (0 s) must be more than 0 s.
            display moon --cycles 101;                    The number of cycles in a turn (101) must lie from 1 to 100.
            display moon --arbor third;                   "third" is no arbor; write centre, hour-wheel
            display moon --arbor 0;                       The speed of the driving arbor (0 turns an hour) must be more than 0
            display moon --meshes 5;                      The number of meshes (5) must lie from 1 to 4.
            display moon --meshes 0;                      "0" is no whole number of at least 1
            display moon --drivers 12-8;                  The most count (8) must be at least the least count (12).
            display moon --resolution 0d;                 The resolution (0d) must be more than 0.
            display moon --resolution 0deg;               The resolution (0deg) must be more than 0.
            display moon --resolution 1mm;                the unit "mm" is not known
            display moon --meshes 1;                      (708.734) must lie from 2.00000 to 12.0000, the reach of the counts
            display moon --meshes 4 --followers 8-500;    The range of followers (8 to 500) must leave at most 15000000 choices
            export @small.json --with record;             Missing: --to FOLDER.
            export @small.json --to out;                  Give --with ID for one exporter or --all for every one
            export --with record --to out @small.json @no-mesh.json --option 1; leave one of them out.
            export --with record --to out @small.json @no-mesh.json;            no-mesh.json: At /meshesAbove
            export --with record --to out @small.json --option 400;             There is no option 400: the front has
            why @small.json --cost --train @no-mesh.json; Both --train and --cost are given
            why @small.json --option 2;                   --option 2 is given without --cost
            why @small.json --cost --option 400;          There is no option 400: the front has
            why @small.json --train @none.json;           the file none.json: there is no such file
            why @small.json --train @no-mesh.json;        no-mesh.json: At /meshesAbove, 1
            why @small.json --train 77/9|76/8;            --train: At the top, "77/9|76/8": the escape wheel is missing
            why @zero.json;                               zero.json: At /objectives/0/resolution, "0 %"
            why @locks.json;                              locks.json: At /locks/meshes/1/place, below-1: each mesh may have one lock
            why @small.json --hold falls=2;               At --hold falls, 2: the falls held must be among those offered
            brief yearly-clock;                           There is no bundled brief "yearly-clock"
            fields brief;                                 "brief" prints no JSON of its own; choose one of solve, rate, ratio, mesh, display, why, pendulum, plugins, layout.
            """)
    void bad_input_is_answered_by_one_sentence_for_each_problem_and_exit_code_2(String command, String sentence) {
        Run run = bench.run(command.split(" ", -1));
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).contains(sentence).doesNotContain("Exception", "\tat ", "null");
    }

    @Test
    void every_problem_of_a_brief_has_its_own_line() {
        bench.writeEdited("two.json", "/run", "{\"atLeast\": \"5 m\", \"wanted\": \"6 d\", \"atMost\": \"7 kg\"}");
        Run run = bench.run("solve", "@two.json");
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertThat(run.err().lines())
                .hasSize(2)
                .allMatch(line -> line.startsWith(bench.file("two.json") + ": At /run/"));
    }

    @Test
    void a_file_name_that_cannot_be_one_is_refused() {
        Run run = bench.run("solve", "odd\0name.json");
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertThat(run.err()).contains("cannot be the name of a file");
    }

    @Test
    void two_things_to_print_at_once_are_refused() {
        Run run = bench.run("brief", "--schema", "--names");
        assertThat(run.code()).isEqualTo(ExitCode.BAD_INPUT.number());
        assertThat(Arrays.asList(run.err().split("\n", -1))).hasSize(2);
    }
}
