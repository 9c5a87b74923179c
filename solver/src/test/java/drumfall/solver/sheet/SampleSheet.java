// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import static drumfall.solver.quantity.Dimension.LENGTH;
import static drumfall.solver.quantity.Dimension.MASS;
import static drumfall.solver.quantity.Dimension.NUMBER;

import drumfall.solver.quantity.Quantity;
import java.util.List;
import java.util.Optional;

/** A sheet with every kind of field. */
record SampleSheet(
        String name,
        boolean glazed,
        @Count(from = 1, to = 9) int shelves,
        Finish finish,

        @Measure(value = LENGTH, over = "0 m", under = "3 m")
        Quantity height,

        @Count(from = 0, to = 5) @Entries(from = 1, to = 3) List<Integer> marks,
        @Count(from = 1, to = 4) Optional<Integer> doors,
        @Measure(value = LENGTH, from = "1 mm") Optional<Quantity> gap,
        Optional<Finish> inside,
        List<Hinge> hinges,

        @Measure(value = NUMBER, to = "100 %") @Measure(value = MASS, from = "1 g")
        Optional<Quantity> tolerance,

        Optional<Hinge> spare) {

    /** A choice of one word and one of two. */
    enum Finish {
        OILED,
        LIMED_OAK
    }

    /** A nested group. */
    record Hinge(
            @Measure(value = LENGTH, over = "0 mm", to = "100 mm")
            Quantity pin,

            Optional<String> maker) {
        Hinge {
            if (maker.filter("nobody"::equals).isPresent()) {
                throw new IllegalArgumentException("a hinge has a maker");
            }
        }
    }

    static final String TEXT = """
            {
              "name": "Corner case",
              "glazed": true,
              "shelves": 3,
              "finish": "limed-oak",
              "height": "5 ft 6 1/2 in",
              "marks": [0, 5],
              "gap": "3/32 in",
              "hinges": [{
                "pin": "2.50 mm"
              }, {
                "pin": "1e-2 m",
                "maker": "Tansy"
              }]
            }
            """;
}
