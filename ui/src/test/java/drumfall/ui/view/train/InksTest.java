// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class InksTest {
    /** WCAG 2.1 (W3C Recommendation, 5 June 2018), success criterion 1.4.3, level AA. */
    private static final double AA = 4.5;

    /** WCAG 2.1, success criterion 1.4.11, graphical objects. */
    private static final double AA_GRAPHICS = 3;

    static Stream<Inks> looks() {
        return Stream.of(new FlatLightLaf(), new FlatDarkLaf()).map(InksTest::inks);
    }

    private static Inks inks(FlatLaf look) {
        return Inks.of(look.getDefaults());
    }

    @ParameterizedTest
    @MethodSource("looks")
    void every_role_reads_on_its_paper_and_on_its_own_wash(Inks inks) {
        assertThat(Arrays.asList(Role.values())).allSatisfy(role -> {
            assertThat(contrast(inks.role(role), inks.paper())).isGreaterThanOrEqualTo(AA);
            assertThat(contrast(inks.role(role), inks.wash(role))).isGreaterThanOrEqualTo(AA);
        });
    }

    @ParameterizedTest
    @MethodSource("looks")
    void figures_and_units_read_on_paper_and_when_pointed_at(Inks inks) {
        assertThat(contrast(inks.line(), inks.paper())).isGreaterThanOrEqualTo(AA);
        assertThat(contrast(inks.line(), inks.wash(Role.CHOSEN))).isGreaterThanOrEqualTo(AA);
        assertThat(contrast(inks.lighter(), inks.paper())).isGreaterThanOrEqualTo(AA);
        assertThat(contrast(inks.role(Role.MISSED), inks.wash(Role.HELD))).isGreaterThanOrEqualTo(AA);
    }

    @ParameterizedTest
    @MethodSource("looks")
    void hairlines_are_seen(Inks inks) {
        assertThat(contrast(inks.hairline(), inks.paper())).isGreaterThanOrEqualTo(AA_GRAPHICS);
    }

    @Test
    void contrast_runs_from_1_to_21() {
        // WCAG 2.1, definition of contrast ratio.
        assertThat(contrast(Color.BLACK, Color.WHITE)).isEqualTo(21);
        assertThat(contrast(Color.RED, Color.RED)).isEqualTo(1);
    }

    private static double contrast(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** Relative luminance as WCAG 2.1 defines it. */
    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
