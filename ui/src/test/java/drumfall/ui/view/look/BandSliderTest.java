// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.formdev.flatlaf.FlatLightLaf;
import drumfall.ui.presenter.MeshSetting.Travel;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BandSliderTest {
    private static final Travel TRAVEL = new Travel(-0.4, 0.4, -0.1, 0.1);

    @ParameterizedTest
    @CsvSource({"-0.4, 0", "0, 200", "0.1, 250", "0.4, 400"})
    void a_value_has_its_step_and_the_step_its_value(double value, int step) {
        assertThat(BandSlider.step(TRAVEL, value)).isEqualTo(step);
        assertThat(BandSlider.value(TRAVEL, step)).isCloseTo(value, within(1e-12));
    }

    @Test
    void showing_a_value_moves_nothing_and_a_move_is_told() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            FlatLightLaf.setup();
            List<Double> told = new ArrayList<>();
            BandSlider slider = new BandSlider(told::add);
            slider.show(Optional.of(TRAVEL), 0.1);
            assertThat(told).isEmpty();
            slider.setValue(300);
            assertThat(told)
                    .singleElement()
                    .satisfies(value -> assertThat(value).isCloseTo(0.2, within(1e-12)));
            slider.show(Optional.empty(), Double.NaN);
            assertThat(slider.isEnabled()).isFalse();
        });
    }

    @Test
    void the_band_stands_where_its_values_are() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            FlatLightLaf.setup();
            BandSlider slider = new BandSlider(value -> {});
            slider.show(Optional.of(TRAVEL), 0);
            slider.setSize(200, 24);
            slider.doLayout();
            slider.paint(new BufferedImage(200, 24, BufferedImage.TYPE_INT_RGB).createGraphics());
            int middle = slider.x(BandSlider.step(TRAVEL, 0));
            // The track is symmetric in its component; a step is less than half a pixel.
            assertThat(middle).isBetween(99, 101);
            assertThat(slider.x(BandSlider.step(TRAVEL, -0.1))).isLessThan(middle);
            assertThat(slider.x(BandSlider.step(TRAVEL, 0.1)) - middle)
                    .isCloseTo(middle - slider.x(BandSlider.step(TRAVEL, -0.1)), within(1));
        });
    }
}
