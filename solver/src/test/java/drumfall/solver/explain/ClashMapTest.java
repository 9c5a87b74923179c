// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class ClashMapTest {
    private static final int BITS = 6;
    private static final long ALL = (1L << BITS) - 1;

    @Test
    void the_whole_is_open_at_first() {
        assertThat(new ClashMap(ALL).open()).hasValue(ALL);
    }

    @Test
    void nothing_is_open_once_the_whole_is_met() {
        ClashMap map = new ClashMap(ALL);
        map.met(ALL);
        assertThat(map.open()).isEmpty();
    }

    @Test
    void nothing_is_open_once_the_empty_set_clashes() {
        ClashMap map = new ClashMap(ALL);
        map.clash(0);
        assertThat(map.open()).isEmpty();
    }

    /** Against every subset of six demands, marked off at random. */
    @RepeatedTest(50)
    void an_open_set_is_given_exactly_while_there_is_one(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        ClashMap map = new ClashMap(ALL);
        List<Long> clashes = new ArrayList<>();
        List<Long> met = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            long set = random.nextLong() & ALL;
            if (random.nextBoolean()) {
                clashes.add(set);
                map.clash(set);
            } else {
                met.add(set);
                map.met(set);
            }
            OptionalLong open = map.open();
            boolean any = false;
            for (long each = 0; each <= ALL; each++) {
                any |= open(each, clashes, met);
            }
            assertThat(open.isPresent()).isEqualTo(any);
            open.ifPresent(found -> assertThat(open(found, clashes, met)).isTrue());
        }
    }

    private static boolean open(long set, List<Long> clashes, List<Long> met) {
        return clashes.stream().noneMatch(clash -> (clash & ~set) == 0)
                && met.stream().noneMatch(known -> (set & ~known) == 0);
    }
}
