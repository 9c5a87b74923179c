// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import drumfall.solver.sheet.SheetProblem;
import drumfall.solver.sheet.SheetResult;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Briefs that a single reading must refuse; the first column edits the demonstration brief. */
class MalformedBriefTest {
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(BriefSchema.text());

    /** Structure, words, counts and units: the schema refuses these as well. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
            /format = remove;                           /format;                    nothing;       the field "format" is missing;                  write "drumfall-brief"
            /format = "drumfall-train";                 /format;                    "drumfall-train"; not in the format "drumfall-brief";         choose another file
            /version = remove;                          /version;                   nothing;       the field "version" is missing;                 write 1
            /version = 2;                               /version;                   2;             newer version of "drumfall-brief" than version 1; open it with a newer version
            /version = "1";                             /version;                   "1";           whole number of at least 1, without quotes;     write 1
            /version = 0;                               /version;                   0;             whole number of at least 1;                     write 1
            /version = 99999999999;                     /version;                   99999999999;   newer version;                                  newer version of Drumfall
            /name = remove;                             /name;                      nothing;       the field "name" is missing;                    text of 1 to 200 characters
            /name = "";                                 /name;                      "";            must not be empty;                              text of 1 to 200 characters
            /name = "   ";                              /name;                      "   ";         must not be empty;                              text of 1 to 200 characters
            /name = 5;                                  /name;                      5;             must be text in quotes;                         text of 1 to 200 characters
            /name = "a\\nb";                            /name;                      "a\\nb";       no control characters;                          text of 1 to 200 characters
            /name = null;                               /name;                      null;          must be text in quotes;                         text of 1 to 200 characters
            /colour = "red";                            /colour;                    "red";         there is no field of that name here;            known here are "name", "run"
            /nmae = "x";                                /nmae;                      "x";           there is no field of that name here;            write "name" if that was meant
            /fall/hieght = "1 m";                       /fall/hieght;               "1 m";         there is no field of that name here;            write "height"
            /fall/a~1b~0c = 1;                          /fall/a~1b~0c;              1;             there is no field of that name here;            "height", "topLead", "tieOff"
            /locks/meshes/0 = {"place": {"side": "above", "number": 1}, "weel": 80, "wheel": 80}; /locks/meshes/0/weel; 80; there is no field of that name here; write "wheel"
            /run = remove;                              /run;                       nothing;       the field "run" is missing;                     fields "atLeast", "wanted", "atMost"
            /run = "8 d";                               /run;                       "8 d";         must be a group in braces;                      fields "atLeast", "wanted", "atMost"
            /run/wanted = remove;                       /run/wanted;                nothing;       the field "wanted" is missing;                  a time of more than 0 h and at most 800 d
            /run/wanted = 8;                            /run/wanted;                8;             a time written as text in quotes;               a time of more than 0 h
            /run/wanted = 8.5;                          /run/wanted;                8.5;           a time written as text in quotes;               a time of more than 0 h
            /run/wanted = "8 m";                        /run/wanted;                "8 m";         the unit "m" is not known;                      s, min, h, d, week
            /run/wanted = "8";                          /run/wanted;                "8";           the unit is missing;                            s, min, h, d, week
            /run/wanted = "";                           /run/wanted;                "";            must not be empty;                              a time of more than 0 h
            /run/wanted = "eight days";                 /run/wanted;                "eight days";  a number was expected;                          s, min, h, d, week
            /fall/height = "4 kg";                      /fall/height;               "4 kg";        the unit "kg" is not known;                     mm, cm, in, ft, m
            /weight/limit = "4 m";                      /weight/limit;              "4 m";         the unit "m" is not known;                      g, oz, lb, kg
            /weight/builders = 0.95;                    /weight/builders;           0.95;          a number written as text in quotes;             more than 0 and at most 1
            /weight/reserve = 0.4;                      /weight/reserve;            0.4;           a number written as text in quotes;             at least 0 and at most 5
            /line/falls = 2;                            /line/falls;                2;             must be a list in square brackets;              list of 1 to 2 entries
            /line/falls = [];                           /line/falls;                [];            at least 1 entry, and it has 0;                 list of 1 to 2 entries
            /line/falls = [1, 2, 1];                    /line/falls;                [1,2,1];       at most 2 entries, and it has 3;                list of 1 to 2 entries
            /line/falls = [3];                          /line/falls/0;              3;             at most 2;                                      whole number from 1 to 2
            /line/falls = ["1"];                        /line/falls/0;              "1";           a whole number without quotes or decimals;      whole number from 1 to 2
            /beat/secondsHand = "no";                   /beat/secondsHand;          "no";          must be true or false;                          without quotes
            /beat/pendulumLength = null;                /beat/pendulumLength;       null;          must be a group in braces;                      fields "from", "to"
            /escapement/kind = "anchor";                /escapement/kind;           "anchor";      the word is not known here;                     write "deadbeat"
            /escapement/kind = "recoil-anchor";         /escapement/kind;           "recoil-anchor"; a recoil anchor is not modelled;              write "deadbeat"
            /arbors/drum/kind = "turnig";               /arbors/drum/kind;          "turnig";      the word is not known here;                     write "turning" if that was meant
            /arbors/drum/kind = "TURNING";              /arbors/drum/kind;          "TURNING";     the word is not known here;                     write "turning" if that was meant
            /arbors/centre/bearings = true;             /arbors/centre/bearings;    true;          must be a word in quotes;                       one of "none", "front", "rear", "both"
            /escapement/teeth/from = 3;                 /escapement/teeth/from;     3;             must be at least 4;                             whole number from 4 to 240
            /escapement/teeth/step = 0;                 /escapement/teeth/step;     0;             must be at least 1;                             whole number from 1 to 240
            /teeth/wheelTeeth/to = 301;                 /teeth/wheelTeeth/to;       301;           must be at most 300;                            whole number from 6 to 300
            /teeth/wheelTeeth/to = 99999999999999999999; /teeth/wheelTeeth/to;      99999999999999999999; must be at most 300;                     whole number from 6 to 300
            /teeth/leaves/from = 4;                     /teeth/leaves/from;         4;             must be at least 5;                             whole number from 5 to 60
            /teeth/leaves/from = 8.5;                   /teeth/leaves/from;         8.5;           a whole number without quotes or decimals;      whole number from 5 to 60
            /teeth/modules = [];                        /teeth/modules;             [];            at least 1 entry;                               list of 1 to 40 entries
            /train/below/to = 5;                        /train/below/to;            5;             must be at most 4;                              whole number from 1 to 4
            /objectives = [];                           /objectives;                [];            at least 1 entry;                               list of 1 to 7 entries
            /objectives/0/figure = "weight";            /objectives/0/figure;       "weight";      the word is not known here;                     one of "recommended-weight", "filament-mass"
            /objectives/0/resolution = "1 N";           /objectives/0/resolution;   "1 N";         not a number or a mass or a length or a time;   in the manner of
            /locks = remove;                            /locks;                     nothing;       the field "locks" is missing;                   "meshes"
            /locks/meshesAbove = 0;                     /locks/meshesAbove;         0;             must be at least 1;                             whole number from 1 to 4
            /locks/meshes/0 = {"wheel": 80};            /locks/meshes/0/place;      nothing;       the field "place" is missing;                   "side", "number"
            /locks/meshes/0 = 80;                       /locks/meshes/0;            80;            must be a group in braces;                      "place", "wheel", "leaves", "module", "distance", "direction"
            /locks/meshes/0 = {"place": {"side": "below", "number": 1}, "distance": 45}; /locks/meshes/0/distance; 45; a length written as text in quotes; at least 1 mm and at most 1 m
            /locks/meshes/0 = {"place": {"side": "below", "number": 1}, "distance": "45 g"}; /locks/meshes/0/distance; "45 g"; the unit "g" is not known;  mm, cm, in, ft, m
            /locks/motionDirection = "30 mm";           /locks/motionDirection;     "30 mm";       the unit "mm" is not known;                     arcmin, °, rad
            """)
    void a_brief_of_another_structure_is_refused(
            String edits, String pointer, String value, String rule, String remedy) {
        ObjectNode tree = SheetEdits.demoWith(edits);
        assertOneProblem(BriefReader.read(tree).problems(), pointer, value, rule, remedy);
        assertOneProblem(BriefReader.read(tree.toPrettyString()).problems(), pointer, value, rule, remedy);
        assertThat(SCHEMA.validate(tree)).isNotEmpty();
    }

    /** Bounds of quantities and fields that do not agree: beyond what a schema can tell. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
            /run/wanted = "8,5 d";                      /run/wanted;                "8,5 d";       a comma could be a decimal sign;                for example "8.5 d"
            /run/wanted = "0 d";                        /run/wanted;                "0 d";         more than 0 h;                                  at most 800 d
            /run/atMost = "801 d";                      /run/atMost;                "801 d";       at most 800 d;                                  more than 0 h
            /fall/height = "-1 m";                      /fall/height;               "-1 m";        more than 0 m;                                  at most 50 m
            /fall/topLead = "-1 mm";                    /fall/topLead;              "-1 mm";       at least 0 m;                                   at most 10 m
            /line/safetyFactor = "50 %";                /line/safetyFactor;         "50 %";        at least 1;                                     at most 50
            /line/pulleyEfficiency = "101 %";           /line/pulleyEfficiency;     "101 %";       at most 1;                                      more than 0
            /escapement/palletSpan = "180 deg";         /escapement/palletSpan;     "180 deg";     less than 180 deg;                              an angle of more than 0 deg
            /escapement/inertiaShare = "1";             /escapement/inertiaShare;   "1";           less than 1;                                    at least 0
            /arbors/drum/diameter = "0 mm";             /arbors/drum/diameter;      "0 mm";        more than 0 mm;                                 at most 50 mm
            /material/density = "1.24 kg/m3";           /material/density;          "1.24 kg/m3";  at least 100 kg/m3;                             at most 20000 kg/m3
            /material/allowable = "0 MPa";              /material/allowable;        "0 MPa";       more than 0 MPa;                                at most 1000 MPa
            /teeth/form = "lantern";                    /teeth/pressureAngle;       "20 deg";      only involute teeth;                            remove it
            /weight/builders = "0 %";                   /weight/builders;           "0 %";         more than 0;                                    at most 1
            /weight/builders = "101 %";                 /weight/builders;           "101 %";       at most 1;                                      more than 0
            /teeth/pressureAngle = "35 deg";            /teeth/pressureAngle;       "35 deg";      at most 34 deg;                                 at least 12 deg
            /teeth/shape = {"pinDiameter":"1.2"};       /teeth/shape/pinDiameter;   "1.2";         only lantern teeth;                            remove it
            /teeth/shape = {"wheelAddendum":"2"};       /teeth/shape/wheelAddendum; "2";           at most 1.8;                                   at least 0.1
            /teeth/thinning/low = "0.2 mm";             /teeth/thinning/high;       "0.1 mm";      must not be less than "low" ("0.2 mm");         raise "high" or lower "low"
            /teeth/centreError = "0.2 mm";              /teeth/thinning/low;        "0.05 mm";     thinned by at least 0.073 mm;                   print the centres truer
            /objectives/0/resolution = "0 g";           /objectives/0/resolution;   "0 g";         more than 0 g;                                  a mass of more than 0 g
            /objectives/0/resolution = "101 %";         /objectives/0/resolution;   "101 %";       at most 100 %;                                  more than 0
            /objectives/0/resolution = "0 %";           /objectives/0/resolution;   "0 %";         more than 0;                                    at most 100 %
            /run/wanted = "7 d";                        /run/wanted;                "7 d";         "wanted" must not be less than "atLeast" ("7.5 d"); raise "wanted" or lower "atLeast"
            /run/atMost = "7.9 d";                      /run/atMost;                "7.9 d";       "atMost" must not be less than "wanted" ("8 d"); raise "atMost" or lower "wanted"
            /drum/diameter/to = "22 mm";                /drum/diameter/to;          "22 mm";       "to" must not be less than "from" ("24 mm");    raise "to" or lower "from"
            /drum/diameter/step = "5 mm";               /drum/diameter/step;        "5 mm";        whole number of steps must lead from "24 mm" to "48 mm"; divides the range
            /drum/diameter/step = "48 mm";              /drum/diameter/step;        "48 mm";       whole number of steps;                          divides the range
            /beat/pendulumLength/to = "9 in";           /beat/pendulumLength/to;    "9 in";        must not be less than "from" ("0.24 m");        raise "to"
            /beat/beatsPerHour = {"from": "7200", "to": "7100"}; /beat/beatsPerHour/to; "7100";    must not be less than "from" ("7200");          raise "to"
            /pendulum/quality/high = "200";             /pendulum/quality/high;     "200";         must not be less than "low" ("250");            raise "high" or lower "low"
            /escapement/teeth/to = 12;                  /escapement/teeth/to;       12;            must not be less than "from" (15);              raise "to"
            /escapement/teeth/step = 4;                 /escapement/teeth/step;     4;             whole number of steps must lead from 15 to 30;  divides the range
            /teeth/wheelTeeth/from = 91;                /teeth/wheelTeeth/to;       90;            must not be less than "from" (91);              lower "from"
            /teeth/leaves/from = 13;                    /teeth/leaves/to;           12;            must not be less than "from" (13);              lower "from"
            /train/above/from = 3;                      /train/above/to;            2;             must not be less than "from" (3);               lower "from"
            /train/below/from = 4;                      /train/below/to;            3;             must not be less than "from" (4);               lower "from"
            /friction/teeth/high = "0.1";               /friction/teeth/high;       "0.1";         must not be less than "low" ("0.15");           raise "high"
            /friction/bores/high = "0.1";               /friction/bores/high;       "0.1";         must not be less than "low" ("0.12");           raise "high"
            /friction/pallets/high = "0.1";             /friction/pallets/high;     "0.1";         must not be less than "low" ("0.12");           raise "high"
            /line/falls = [2, 2];                       /line/falls/1;              2;             each number of falls may be listed once;        remove the repetition
            /teeth/modules/3 = "1.5e-3 m";              /teeth/modules/3;           "1.5e-3 m";    each module may be listed once;                 remove the repetition
            /teeth/modules/0 = "1/21 in";               /teeth/modules/0;           "1/21 in";     a whole number of nanometres;                   at most six decimals
            /frame/depth = "2 in";                      /frame/depth;               "2 in";        takes 58.6 mm between the plates;               make the frame deeper
            /arbors/escape/bearing = {"outer": "1.5 mm", "width": "1 mm"}; /arbors/escape/bearing/outer; "1.5 mm"; outer diameter must be more than its rod; take a larger bearing
            /arbors/drum/kind = "fixed";                /arbors/drum/kind;          "fixed";       the drum's rod must turn with the drum;         write "turning"
            /frame/pillars = {"diameter": "12 mm", "sideInset": "5 mm", "endInset": "8 mm"}; /frame/pillars/sideInset; "5 mm"; must not stand out of the frame; set it further in
            /frame/pillars = {"diameter": "12 mm", "sideInset": "8 mm", "endInset": "155 mm"}; /frame/pillars/endInset; "155 mm"; room beside each other in "320 mm"; nearer to the edge
            /drum/ratchet = {"teeth": 7, "toothDepth": "2 mm", "thickness": "5 mm"}; /drum/ratchet/teeth; 7; at least 8; from 8 to 90
            /drum/clickSpace = "0.3 mm"; /drum/clickSpace; "0.3 mm"; take two layers ("0.2 mm" each) at least; leave more room
            /drum/ratchet = {"teeth": 18, "toothDepth": "2 mm", "thickness": "6.1 mm"}; /drum/ratchet/thickness; "6.1 mm"; must find room ("6 mm") between great wheel and drum; make the ratchet thinner
            /drum/ratchet = {"teeth": 18, "toothDepth": "0.8 mm", "thickness": "5 mm"}; /drum/ratchet/toothDepth; "0.8 mm"; deeper than two nozzle widths ("0.4 mm" each), where the click bears; make the teeth deeper
            /pendulum/bob = {"diameter": "80 mm", "thickness": "20 mm", "behindPlate": "10 mm"}; /pendulum/bob/behindPlate; "10 mm"; a bob ("20 mm" thick) must swing clear of the back plate; hang it further back
            /frame/least = {"figure": "movement-height", "resolution": "10 cm2"}; /frame/least/resolution; "10 cm2"; "movement-height" is told apart in steps of a length; write it in mm
            /frame/pillars = remove & /frame/least = {"figure": "plate-area", "resolution": "10 mm"}; /frame/least/resolution; "10 mm"; "plate-area" is told apart in steps of an area; write it in cm²
            /frame/least = {"figure": "movement-width", "resolution": "5 mm", "enough": "2 in2"}; /frame/least/enough; "2 in2"; "movement-width" is told apart in steps of a length; write it in mm
            /frame/least = {"figure": "movement-depth", "resolution": "0 mm"}; /frame/least/resolution; "0 mm"; at least 0.01 mm; 1 m
            /frame/arrangement = "unplaced" & /frame/least = {"figure": "movement-depth", "resolution": "1 mm"}; /frame/least/figure; "movement-depth"; left unplaced take no room; write another /frame/arrangement
            /frame/pillars = {"diameter": "12 mm", "sideInset": "8 mm", "endInset": "8 mm"} & /frame/least = {"figure": "plate-area", "resolution": "10 cm2"}; /frame/least/figure; "plate-area"; a plate covers the pillars; make the height or the width small instead
            /frame/dialFromLeft = "221 mm";             /frame/dialFromLeft;        "221 mm";      the dial centre must lie in the frame, which measures "220 mm"; move it in
            /frame/dialFromBottom = "321 mm";           /frame/dialFromBottom;      "321 mm";      which measures "320 mm";                        make the frame larger
            /frame/width = "1001 mm";                   /frame/width;               "1001 mm";     at most 1 m;                                    more than 0 mm
            /fit/endShake/high = "0.1 mm";              /fit/endShake/high;         "0.1 mm";      must not be less than "low" ("0.2 mm");         raise "high"
            /fit/firstLayer = "0.5 mm";                 /fit/firstLayer;            "0.5 mm";      must not be higher than the nozzle ("0.4 mm");  lower the first layer
            /fit/skim = "0.3 mm";                       /fit/skim;                  "0.3 mm";      at most 0.2 mm;                                 at least 0.1 mm
            /parts/wheelThickness = "0.39 mm";          /parts/wheelThickness;      "0.39 mm";     at least two layers ("0.2 mm" each);            make the wheel thicker
            /printer/layer = "0.41 mm";                 /printer/layer;             "0.41 mm";     must not be higher than the nozzle ("0.4 mm");  lower the layer
            /beat/pendulumLength = remove;              /beat;                      no demand;     asked for by length, by beats an hour or by a seconds hand; add "pendulumLength"
            /beat/beatsPerHour = {"from": "3600", "to": "3600"}; /beat/beatsPerHour; "3600" to "3600"; pendulums of the lengths asked for beat 7035 to 7325 times an hour; bring them together
            /beat/secondsHand = true & /train/below = {"from": 1, "to": 1}; /beat/secondsHand; true; an even number of meshes from the centre, and at most 1; allow at least 2 meshes
            /beat/secondsHand = true & /locks/meshesBelow = 2; /beat/secondsHand;  true;          gives none of the beats asked for;              120 beats an hour for each escape tooth
            /escapement/palletSpan = "17 deg";          /escapement/palletSpan;     "17 deg";      embrace at least one and a half tooth spaces;   widen the span
            /escapement/drop = "12 deg";                /escapement/drop;           "12 deg";      less than half the tooth space;                 make the drop smaller
            /escapement/palletSpan = "30 deg" & /escapement/drop = "10.5 deg"; /escapement/palletSpan; "30 deg"; both lies within the span and has more than the drop; make the drop smaller
            /escapement/reserveArc = "30 deg" & /friction/pallets/low = "0.2"; /escapement/reserveArc;     "30 deg";      no weight swings the pendulum 32.5° from rest;  ask for less reserve
            /objectives/1/figure = "recommended-weight"; /objectives/1/figure;      "recommended-weight"; may be an objective once;               remove the repetition
            /objectives/0/resolution = remove;          /objectives/0/resolution;   nothing;       "recommended-weight" needs a resolution;        write a mass or a share
            /objectives/0 = {"figure": "meshes", "resolution": "1"}; /objectives/0/resolution; "1"; "meshes" is a whole count;                   leave the resolution out
            /objectives/0/resolution = "1 mm";          /objectives/0/resolution;   "1 mm";        must be a mass or a share;                      a mass in kg
            /objectives/2/resolution = "1 h";           /objectives/2/resolution;   "1 h";         must be a length or a share;                    a length in m
            /locks/meshes/0 = {"place": {"side": "above", "number": 1}, "wheel": 23}; /locks/meshes/0/wheel; 23; from 24 to 90;                    widen the range
            /locks/meshes/0 = {"place": {"side": "above", "number": 1}, "leaves": 13}; /locks/meshes/0/leaves; 13; from 8 to 12;                   widen the range
            /locks/meshes/0 = {"place": {"side": "above", "number": 1}, "module": "2 mm"}; /locks/meshes/0/module; "2 mm"; which are 1 mm, 1.25 mm, 1.5 mm; add this one to the list
            /locks/meshes/0 = {"place": {"side": "above", "number": 1}}; /locks/meshes/0; above-1;  must hold its wheel, leaves, module, distance or direction; remove the lock
            /locks/meshes/0 = {"place": {"side": "below", "number": 1}, "wheel": 64, "leaves": 8, "module": "1.25 mm", "distance": "45.0011 mm"}; /locks/meshes/0/distance; "45.0011 mm"; wheel, leaves and module held of this mesh put it on 45 mm; let one of the four go
            /hands/motionWork = false & /locks/motionDirection = "30 deg"; /locks/motionDirection; "30 deg"; only if there is one; ask for a motion work
            /hands/motionWork = false & /locks/motionDistance = "20 mm"; /locks/motionDistance; "20 mm"; only if there is one; let the distance go
            /locks/meshes/0 = {"place": {"side": "above", "number": 3}, "wheel": 80}; /locks/meshes/0/place/number; 3; at most 2 meshes are allowed;       allow more meshes
            /locks/meshesBelow = 2 & /locks/meshes/0 = {"place": {"side": "below", "number": 3}, "wheel": 80}; /locks/meshes/0/place/number; 3; at most 2 meshes are allowed; hold an earlier mesh
            /locks/meshes/0 = {"place": {"side": "below", "number": 1}, "wheel": 80} & /locks/meshes/1 = {"place": {"side": "below", "number": 1}, "leaves": 8}; /locks/meshes/1/place; below-1; may have one lock; into one lock
            /locks/meshesAbove = 3;                     /locks/meshesAbove;         3;             from 1 to 2;                                    widen the range
            /locks/meshesBelow = 1;                     /locks/meshesBelow;         1;             from 2 to 3;                                    widen the range
            /locks/drumDiameter = "25 mm";              /locks/drumDiameter;        "25 mm";       from "24 mm" to "48 mm" in steps of "2 mm";     hold one of these sizes
            /locks/drumDiameter = "50 mm";              /locks/drumDiameter;        "50 mm";       from "24 mm" to "48 mm" in steps of "2 mm";     hold one of these sizes
            /line/falls = [1] & /locks/falls = 2;       /locks/falls;               2;             among those offered, which are 1;               offer this one
            /locks/escapeTeeth = 16;                    /locks/escapeTeeth;         16;            from 15 to 30 teeth in steps of 3;              hold one of these counts
            /locks/escapeTeeth = 33;                    /locks/escapeTeeth;         33;            from 15 to 30 teeth in steps of 3;              hold one of these counts
            """)
    void a_brief_that_contradicts_a_bound_or_itself_is_refused(
            String edits, String pointer, String value, String rule, String remedy) {
        ObjectNode tree = SheetEdits.demoWith(edits);
        assertOneProblem(BriefReader.read(tree).problems(), pointer, value, rule, remedy);
    }

    private static void assertOneProblem(
            List<SheetProblem> problems, String pointer, String value, String rule, String remedy) {
        assertThat(problems).hasSize(1);
        SheetProblem problem = problems.get(0);
        assertThat(problem.pointer()).isEqualTo(pointer);
        assertThat(problem.value()).isEqualTo(value);
        assertThat(problem.rule()).contains(rule);
        assertThat(problem.remedy()).contains(remedy);
        assertThat(problem.sentence())
                .startsWith("At " + pointer + ", " + value + ": ")
                .containsSubsequence(rule, "; ", remedy)
                .endsWith(".")
                .doesNotEndWith("..")
                .hasLineCount(1);
    }

    /** The satisfying side of the rules between fields, most of them just inside. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
            `/run/atLeast = "192 h" & /run/atMost = "8 d"`
            `/weight/builders = "100 %"`
            `/weight/builders = "0.95"`
            `/drum/diameter/to = "24 mm"`
            `/drum/diameter/step = "24 mm"`
            `/beat/pendulumLength/to = "0.24 m"`
            `/beat/pendulumLength = remove & /beat/secondsHand = true`
            `/beat/beatsPerHour = {"from": "7200", "to": "7200"}`
            `/beat/beatsPerHour = {"from": "7324", "to": "8000"}`
            `/beat/pendulumLength = {"from": "0.99 m", "to": "1 m"} & /beat/secondsHand = true & /locks/meshesBelow = 2`
            `/beat/pendulumLength = remove & /beat/beatsPerHour = {"from": "1800", "to": "1800"} & /beat/secondsHand = true & /locks/meshesBelow = 2`
            `/beat/secondsHand = true`
            `/pendulum/quality/high = "250"`
            `/escapement/teeth = {"from": 15, "to": 15, "step": 7}`
            `/escapement/palletSpan = "18 deg"`
            `/escapement/drop = "11 deg"`
            `/escapement/palletSpan = "36 deg" & /escapement/drop = "11 deg"`
            `/escapement/reserveArc = "15 deg"`
            `/teeth/leaves = {"from": 12, "to": 12} & /teeth/wheelTeeth = {"from": 90, "to": 90}`
            `/friction/teeth/high = "15 %"`
            `/line/falls = [2, 1]`
            `/teeth/modules/3 = "1.500001 mm"`
            `/frame/depth = "58.6 mm"`
            `/parts/wheelThickness = "0.4 mm"`
            `/printer/layer = "0.4 mm"`
            `/objectives/0 = {"figure": "meshes"}`
            `/objectives/0/resolution = "1 oz"`
            `/objectives/2/resolution = "100 %"`
            `/objectives/0 = {"figure": "duration-error", "resolution": "1 h"}`
            `/locks/meshes/0 = {"place": {"side": "above", "number": 2}, "wheel": 24, "leaves": 12, "module": "0.00125 m"}`
            `/locks/meshes/0 = {"place": {"side": "above", "number": 1}, "wheel": 90} & /locks/meshes/1 = {"place": {"side": "below", "number": 1}, "wheel": 90}`
            `/locks/meshes/0 = {"place": {"side": "below", "number": 1}, "wheel": 64, "leaves": 8, "module": "1.25 mm", "distance": "45.001 mm"}`
            `/locks/meshes/0 = {"place": {"side": "below", "number": 1}, "wheel": 64, "module": "1.25 mm", "distance": "99 mm"}`
            `/hands/motionWork = true & /locks/motionDirection = "30 deg" & /locks/motionDistance = "20 mm"`
            `/hands/motionWork = false & /locks/palletDistance = "1 in"`
            `/locks/meshesAbove = 2 & /locks/meshesBelow = 3 & /locks/falls = 2`
            `/frame/least = {"figure": "movement-height", "resolution": "0.01 mm", "enough": "3 in"}`
            `/frame/pillars = remove & /frame/least = {"figure": "plate-area", "resolution": "0.01 cm2", "enough": "1 m2"}`
            `/frame/arrangement = "shallow" & /frame/least = {"figure": "movement-depth", "resolution": "1 mm"}`
            `/locks/drumDiameter = "48 mm" & /locks/escapeTeeth = 30`
            `/locks/drumDiameter = "2.6 cm" & /locks/escapeTeeth = 18`
            """)
    void a_brief_just_inside_its_rules_is_accepted(String edits) {
        ObjectNode tree = SheetEdits.demoWith(edits);
        SheetResult<Brief> result = BriefReader.read(tree);
        assertThat(result.problems()).isEmpty();
        assertThat(BriefReader.read(BriefWriter.write(result.accepted().orElseThrow())))
                .isEqualTo(result);
        assertThat(SCHEMA.validate(tree)).isEmpty();
    }
}
