// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SheetRoundTripTest {
    private static final int SHEETS = "full".equals(System.getProperty("drumfall.samples")) ? 10_000 : 200;

    private static final List<String> NUMBERS =
            List.of("1", "2.50", "1/3", "1 3/32", "½", "1e-1", " 2 ", "+1", "0.000000000000000001");

    private static final List<String> LENGTH_UNITS =
            List.of(" mm", "mm", " cm", " in", "\"", " ″", " µm", " μm", " inches");

    private static final List<String> NAMES =
            List.of("a", "Ünïcödé 𝄞", "say \"oak\"", "back\\slash", "{}[],:", "½ µm", " blank ends ", "x".repeat(200));

    private final SplittableRandom random = new SplittableRandom(1_657);

    @Test
    void the_sample_is_written_as_it_was_read() {
        SampleSheet sheet =
                SheetReader.read(SampleSheet.class, SampleSheet.TEXT).accepted().orElseThrow();
        assertThat(SheetWriter.write(sheet)).isEqualTo(SampleSheet.TEXT);
    }

    @Test
    void any_sheet_is_read_back_equal_and_written_the_same_again() {
        for (int run = 0; run < SHEETS; run++) {
            SampleSheet sheet = sheet();
            String text = SheetWriter.write(sheet);
            SheetResult<SampleSheet> read = SheetReader.read(SampleSheet.class, text);
            assertThat(read.problems()).isEmpty();
            assertThat(read.accepted()).contains(sheet);
            assertThat(SheetWriter.write(read.accepted().orElseThrow())).isEqualTo(text);
        }
    }

    private SampleSheet sheet() {
        return new SampleSheet(
                oneOf(NAMES),
                random.nextBoolean(),
                random.nextInt(1, 10),
                oneOf(List.of(SampleSheet.Finish.values())),
                length(),
                several(1, 3, () -> random.nextInt(6)),
                maybe(() -> random.nextInt(1, 5)),
                maybe(() -> Quantity.parse(Dimension.LENGTH, "3 1/4 in")),
                maybe(() -> SampleSheet.Finish.OILED),
                several(0, 4, this::hinge),
                maybe(() -> Quantity.parse(Dimension.MASS, oneOf(List.of("1 g", "9 1/4 lb", "2 lb 3 oz")))),
                maybe(this::hinge));
    }

    private SampleSheet.Hinge hinge() {
        return new SampleSheet.Hinge(length(), maybe(() -> oneOf(NAMES)));
    }

    private Quantity length() {
        return Quantity.parse(Dimension.LENGTH, oneOf(NUMBERS) + oneOf(LENGTH_UNITS));
    }

    private <T> T oneOf(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    private <T> Optional<T> maybe(Supplier<T> value) {
        return random.nextBoolean() ? Optional.of(value.get()) : Optional.empty();
    }

    private <T> List<T> several(int least, int most, Supplier<T> value) {
        return Stream.generate(value).limit(random.nextInt(least, most + 1)).toList();
    }
}
