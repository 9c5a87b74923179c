// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.sheet.SheetProblem;
import drumfall.solver.sheet.SheetResult;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BriefMutationTest {
    private static final int MUTATIONS = "full".equals(System.getProperty("drumfall.samples")) ? 20_000 : 200;

    private static final String INSERTS = "{}[]:,\"\\/ -+.eE0123456789nullx\u0000\uFEFF\uD800\u00BD\n";

    /** Most mutations spoil the text; both outcomes must occur, or the test would look at one branch alone. */
    @Test
    void a_mutated_brief_is_read_or_refused_in_plain_sentences() {
        SplittableRandom random = new SplittableRandom(20_261_125);
        int refused = 0;
        for (int run = 0; run < MUTATIONS; run++) {
            String text = mutated(BundledBriefs.text(BundledBriefs.DESK_CLOCK).orElseThrow(), random);
            SheetResult<Brief> result = BriefReader.read(text);
            result.problems().forEach(BriefMutationTest::assertPlain);
            refused += result.accepted().isPresent() ? 0 : 1;
        }
        assertThat(refused).isBetween(MUTATIONS / 2, MUTATIONS - 1);
    }

    private static void assertPlain(SheetProblem problem) {
        assertThat(problem.sentence())
                .startsWith("At ")
                .endsWith(".")
                .hasLineCount(1)
                .doesNotContain("Exception", "java.", "jackson", "token")
                .hasSizeLessThan(1200);
        assertThat(problem.value()).isNotEmpty();
        assertThat(problem.rule()).isNotBlank();
        assertThat(problem.remedy()).isNotBlank();
    }

    private static String mutated(String text, SplittableRandom random) {
        StringBuilder mutant = new StringBuilder(text);
        int edits = random.nextInt(1, 4);
        for (int edit = 0; edit < edits; edit++) {
            mutate(mutant, random);
        }
        return mutant.toString();
    }

    private static void mutate(StringBuilder mutant, SplittableRandom random) {
        int at = random.nextInt(mutant.length());
        int end = Math.min(mutant.length(), at + random.nextInt(1, 30));
        switch (random.nextInt(5)) {
            case 0 -> mutant.delete(at, end);
            case 1 -> mutant.insert(at, mutant.substring(at, end));
            case 2 -> mutant.insert(at, INSERTS.charAt(random.nextInt(INSERTS.length())));
            case 3 -> mutant.setCharAt(at, INSERTS.charAt(random.nextInt(INSERTS.length())));
            default -> mutant.insert(at, "9".repeat(random.nextInt(1, 400)));
        }
    }
}
