// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class ExchangeTest {
    /** A record of three kinds of components, one of which may refuse its value. */
    public record Plate(String name, int holes, double thickness) {
        /** Holes are counted from none. */
        public Plate {
            if (holes < 0) {
                throw new IllegalArgumentException("no fewer than none");
            }
        }
    }

    private static final Plate PLATE = new Plate("front", 5, 0.004);

    @Test
    void one_component_is_exchanged_and_the_others_stay() {
        assertThat(Exchange.in(PLATE, "name", "rear")).isEqualTo(new Plate("rear", 5, 0.004));
        assertThat(Exchange.in(PLATE, "holes", 6)).isEqualTo(new Plate("front", 6, 0.004));
        assertThat(Exchange.in(PLATE, "thickness", 0.003)).isEqualTo(new Plate("front", 5, 0.003));
        assertThat(PLATE).isEqualTo(new Plate("front", 5, 0.004));
    }

    @Test
    void what_the_record_refuses_is_refused_in_its_own_words() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Exchange.in(PLATE, "holes", -1))
                .withMessage("no fewer than none");
    }

    @Test
    void a_value_that_is_none_for_the_component_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Exchange.in(PLATE, "holes", "six"));
    }

    @Test
    void a_component_that_there_is_none_of_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Exchange.in(PLATE, "hole", 6))
                .withMessageContaining("(hole) must be one of name, holes, thickness");
    }
}
