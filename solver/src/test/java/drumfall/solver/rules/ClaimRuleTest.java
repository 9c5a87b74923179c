// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.ESat;
import org.junit.jupiter.api.Test;

class ClaimRuleTest {
    // A claim without any pattern: membership in a random set. What is found must be that set, nothing more or less.
    @Test
    void the_solutions_are_the_assignments_for_which_the_claim_holds() {
        Random random = new Random(1);
        for (int round = 0; round < 100; round++) {
            Set<String> claimed = new HashSet<>();
            for (int i = 0; i < 30; i++) {
                claimed.add(Arrays.toString(new int[] {random.nextInt(4), random.nextInt(4), random.nextInt(4)}));
            }
            Model model = new Model();
            IntVar[] vars = model.intVarArray("v", 3, 0, 3, false);
            new Constraint("claim", new ClaimRule(values -> claimed.contains(Arrays.toString(values)), vars)).post();
            Set<String> found = new HashSet<>();
            while (model.getSolver().solve()) {
                found.add(Arrays.toString(
                        Arrays.stream(vars).mapToInt(IntVar::getValue).toArray()));
            }
            assertThat(found).isEqualTo(claimed);
        }
    }

    @Test
    void the_last_open_variable_keeps_only_values_for_which_the_claim_holds() throws ContradictionException {
        Model model = new Model();
        IntVar fixed = model.intVar("fixed", 5);
        IntVar open = model.intVar("open", new int[] {1, 2, 3, 7, 9, 12});
        new Constraint("claim", new ClaimRule(values -> (values[0] + values[1]) % 2 == 0, fixed, open)).post();

        model.getSolver().propagate();

        assertThat(open.stream().toArray()).containsExactly(1, 3, 7, 9);
    }

    @Test
    void a_claim_is_not_asked_while_two_variables_are_open() throws ContradictionException {
        Model model = new Model();
        IntVar[] vars = model.intVarArray("v", 2, 0, 3, false);
        Constraint rule = new Constraint(
                "claim",
                new ClaimRule(
                        values -> {
                            throw new AssertionError("asked too early");
                        },
                        vars));
        rule.post();

        model.getSolver().propagate();

        assertThat(rule.isSatisfied()).isEqualTo(ESat.UNDEFINED);
    }
}
