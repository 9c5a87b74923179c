// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import drumfall.plugin.api.Handover;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class TrialHandoverTest {
    @Test
    void the_eight_day_clock_has_a_place_for_every_arbor() {
        assertThat(TrialHandover.eightDays().layout()).isPresent();
    }

    @Test
    void the_eight_day_clock_meets_every_demand() {
        Handover handover = TrialHandover.eightDays();
        assertThat(handover.rating().missed()).isEmpty();
        assertThat(handover.rating().demands()).isNotEmpty();
    }

    /** Goodrich, <i>The Modern Clock</i>, 1905: 64/8, 60/8 and an escape wheel of 30 beat seconds. */
    @Test
    void the_eight_day_clock_beats_seconds() {
        assertThat(TrialHandover.eightDays().rating().train().going().beatsPerHour())
                .isEqualTo(BigFraction.of(3600));
    }

    @Test
    void the_trial_folder_keeps_what_is_written() throws IOException {
        TrialFolder folder = new TrialFolder();
        try (OutputStream stream = folder.create("b.txt")) {
            stream.write("beat".getBytes(StandardCharsets.UTF_8));
        }
        folder.create("a.txt").close();
        assertThat(folder.names()).containsExactly("a.txt", "b.txt");
        assertThat(folder.text("b.txt")).isEqualTo("beat");
    }

    @Test
    void the_trial_folder_refuses_a_name_twice_and_an_unknown_one() {
        TrialFolder folder = new TrialFolder();
        folder.create("a.txt");
        assertThatIllegalArgumentException().isThrownBy(() -> folder.create("a.txt"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> folder.text("c.txt"))
                .withMessageContaining("[a.txt]");
    }
}
