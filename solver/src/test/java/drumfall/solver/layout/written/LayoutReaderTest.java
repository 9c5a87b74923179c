// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.written;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.LayoutOutcome;
import drumfall.solver.layout.Movements;
import drumfall.solver.layout.Place;
import drumfall.solver.layout.Planes;
import drumfall.solver.layout.Span;
import drumfall.solver.layout.check.LayoutCheck;
import drumfall.solver.layout.place.Placer;
import drumfall.solver.layout.size.MovementParts;
import drumfall.solver.layout.size.Nanometres;
import drumfall.solver.sheet.SheetProblem;
import drumfall.solver.sheet.SheetResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LayoutReaderTest {
    private static final int CASES = "full".equals(System.getProperty("drumfall.samples")) ? 2_000 : 100;
    private static final long MM = 1_000_000;

    private static Layout placed;

    @BeforeAll
    static void place() {
        LayoutNeed need = Movements.need(Movements.eightDay(), Movements.frame(300, 420, 130), 8);
        placed = ((LayoutOutcome.Placed) Placer.place(need, () -> false)).layout();
    }

    @Test
    void a_placed_layout_comes_back_equal_and_without_faults() {
        Layout back = read(LayoutReader.write("Eight days", placed), placed.need())
                .accepted()
                .orElseThrow()
                .layout(placed.need());

        assertThat(back).isEqualTo(placed);
        assertThat(LayoutCheck.faults(back)).isEmpty();
    }

    /** Places anywhere within a metre, sound or not: the file must not lose a nanometre of any. */
    @Test
    void no_nanometre_is_lost() {
        Random random = new Random(20261125);
        for (int i = 0; i < CASES; i++) {
            Layout drawn = drawn(random);
            String text = LayoutReader.write("Drawn", drawn);

            LayoutSheet sheet = read(text, drawn.need()).accepted().orElseThrow();

            assertThat(sheet.layout(drawn.need())).isEqualTo(drawn);
            assertThat(LayoutReader.FORMAT.write(sheet)).isEqualTo(text);
        }
    }

    private static Layout drawn(Random random) {
        MovementParts parts = random.nextBoolean()
                ? Movements.eightDay()
                : Movements.parts(1, Movements.eightDay().meshes().subList(0, 1 + random.nextInt(4)), false);
        LayoutNeed need = Movements.need(parts, Movements.frame(300, 420, 130), 4);
        List<Place> places = IntStream.range(0, parts.placeCount())
                .mapToObj(arbor -> new Place(anywhere(random), anywhere(random)))
                .toList();
        List<Span> gears = new ArrayList<>();
        long rear = -random.nextInt(50) * MM;
        for (int gear = 0; gear <= parts.meshes().size(); gear++) {
            long front = rear + random.nextInt(50_000_000);
            gears.add(new Span(rear, front));
            rear = front + random.nextInt(50_000_000);
        }
        List<Span> motion = parts.motion().isPresent() ? List.of(new Span(rear, rear + 1), new Span(-1, 0)) : List.of();
        Planes planes = new Planes(
                gears, new Span(rear - 7, rear), motion, random.nextInt(1_000_000_001), random.nextInt(1_000_000_001));
        return new Layout(need, places, new Place(anywhere(random), anywhere(random)), planes);
    }

    private static long anywhere(Random random) {
        return random.nextLong(-Nanometres.LONGEST, Nanometres.LONGEST + 1);
    }

    /** 25.4 mm are an inch exactly: international yard and pound agreement, 1959. */
    @Test
    void other_units_are_read_exactly() {
        String text = LayoutReader.write("Inches", placed).replaceFirst("\"-?[0-9.]+ mm\"", "\"-1 3/8 in\"");

        Layout back = read(text, placed.need()).accepted().orElseThrow().layout(placed.need());

        assertThat(back.place(0).x()).isEqualTo(-34_925_000);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            /arbors/0/x;          "1/3 in";     a length must be a whole number of nanometres; write it in mm
            /arbors/1/y;          "2 m";        it must be at most 1 m; write a length
            /arbors/2/x;          12;           it must be a length written as text in quotes; write
            /pallets;             null;         it must be a group in braces; write
            /planes/drum/to;      "-99 mm";     the front end must not lie behind the rear end; exchange the two
            /planes/motionWork;   [];           the train and its brief ask for 2 here; add the missing ones
            /arbors;              [{"x": "0 mm", "y": "0 mm"}, {"x": "0 mm", "y": "0 mm"}]; the train and its brief ask for 5 here; add the missing ones
            /planes/escapement;   {"from": "-1 m", "to": "1 m"}; the planes of pinion and wheel of arbor 5 must not overlap; move one
            /planes/meshes/1/from; "-100.0000001 mm"; a length must be a whole number of nanometres; write it in mm
            """)
    void what_is_no_layout_is_refused_with_its_place_and_a_remedy(
            String pointer, String json, String rule, String remedy) throws JsonProcessingException {
        List<SheetProblem> problems = read(edited(pointer, json), placed.need()).problems();

        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).pointer()).startsWith(pointer);
        assertThat(problems.get(0).rule()).contains(rule);
        assertThat(problems.get(0).remedy()).contains(remedy);
    }

    @Test
    void a_layout_with_motion_work_is_none_of_a_movement_without() {
        LayoutNeed without = Movements.need(
                Movements.parts(2, Movements.eightDay().meshes(), false), Movements.frame(300, 420, 130), 4);

        assertThat(read(LayoutReader.write("With", placed), without).problems())
                .extracting(SheetProblem::pointer)
                .containsExactly("/planes/motionWork", "/minuteArbor");
    }

    private static SheetResult<LayoutSheet> read(String text, LayoutNeed need) {
        return LayoutReader.read(text, need);
    }

    private static String edited(String pointer, String json) throws JsonProcessingException {
        JsonMapper mapper = new JsonMapper();
        ObjectNode tree = LayoutReader.FORMAT.tree(LayoutSheet.of("Edited", placed));
        JsonPointer place = JsonPointer.compile(pointer);
        ((ObjectNode) tree.at(place.head())).set(place.last().getMatchingProperty(), mapper.readTree(json));
        return tree.toString();
    }
}
