// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.brief.RoomFigure;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.ui.presenter.PlacedTrains;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoomWordingTest {
    private static Brief wanting(String figure, String resolution, String enough) {
        ObjectNode tree = BriefWriter.tree(BundledBriefs.demo());
        ObjectNode frame = (ObjectNode) tree.get("frame");
        frame.remove("pillars");
        ObjectNode least = frame.putObject("least").put("figure", figure).put("resolution", resolution);
        if (enough != null) {
            least.put("enough", enough);
        }
        return BriefReader.read(tree).accepted().orElseThrow();
    }

    private static RoomWording wording(Brief brief) {
        return RoomWording.of(brief, FigureWording.in(UnitSystem.METRIC)).orElseThrow();
    }

    private static Rating rated(Brief brief) {
        return new TrainRater(brief).rate(PlacedTrains.weekly());
    }

    /** Steps times resolution by hand; what is small enough has as many steps as cover it. */
    @ParameterizedTest
    @CsvSource(nullValues = "-", textBlock = """
            movement-height, 10 mm,  -,      19, 190 mm
            movement-width,  2.5 mm, -,      75, 187.5 mm
            movement-height, 10 mm,  195 mm, 20, 200 mm or less
            movement-height, 10 mm,  200 mm, 20, 200 mm or less
            movement-height, 10 mm,  200 mm, 21, 210 mm
            plate-area,      10 cm2, -,      21, 210 cm²
            """)
    void a_size_is_told_in_whole_steps(String figure, String resolution, String enough, long steps, String words) {
        Brief brief = wanting(figure, resolution, enough);
        assertThat(wording(brief).shown(rated(brief).withRoom(steps))).isEqualTo(words);
    }

    @Test
    void less_room_is_told_only_where_both_are_known() {
        Brief brief = wanting("movement-height", "10 mm", null);
        RoomWording wording = wording(brief);
        Rating plain = rated(brief);
        Rating unmeasured = plain.withRoom(Long.MAX_VALUE);
        assertThat(wording.less(plain.withRoom(3), plain.withRoom(4))).isTrue();
        assertThat(wording.less(plain.withRoom(4), plain.withRoom(4))).isFalse();
        assertThat(wording.less(plain.withRoom(4), plain)).isFalse();
        assertThat(wording.less(plain.withRoom(4), unmeasured)).isFalse();
        assertThat(wording.less(plain, plain.withRoom(4))).isFalse();
        assertThat(wording.size(plain)).isEmpty();
        assertThat(wording.size(unmeasured)).isEmpty();
        assertThat(wording.size(plain.withRoom(4))).hasValue(0.04);
    }

    @Test
    void a_brief_that_does_not_want_it_small_has_no_words_for_it() {
        assertThat(RoomWording.of(BundledBriefs.demo(), FigureWording.in(UnitSystem.METRIC)))
                .isEmpty();
    }

    @Test
    void every_figure_has_a_name_of_its_own() {
        assertThat(Stream.of(RoomFigure.values()).map(RoomWording::name))
                .doesNotHaveDuplicates()
                .noneMatch(String::isBlank);
    }
}
