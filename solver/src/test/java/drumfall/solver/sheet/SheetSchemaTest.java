// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetSchemaTest {
    private static final SheetFormat<SampleSheet> FORMAT = new SheetFormat<>(SampleSheet.class, "sample", 1);

    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SheetSchema.of(FORMAT));

    @Test
    void the_sample_is_valid() {
        SampleSheet sheet =
                SheetReader.read(SampleSheet.class, SampleSheet.TEXT).accepted().orElseThrow();
        assertThat(SCHEMA.validate(FORMAT.write(sheet), InputFormat.JSON)).isEmpty();
    }

    @Test
    void a_sheet_without_its_opening_is_not_valid() {
        assertThat(SCHEMA.validate(SampleSheet.TEXT, InputFormat.JSON)).isNotEmpty();
    }

    /** Whatever the reader takes, the pattern takes. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', delimiter = ';', textBlock = """
            LENGTH; 1.25 m
            LENGTH; `  +1.25m `
            LENGTH; 5 ft 6 1/2 in
            LENGTH; 5' 6½″
            LENGTH; 5’6”
            LENGTH; ⅞ in
            LENGTH; .5 mm
            LENGTH; −3 μm
            LENGTH; 1\u00A0m
            LENGTH; 1\u2003m
            LENGTH; `1
             m`
            MASS;   9 lb 4 oz
            TIME;   1 week 2 d 3 h
            ANGLE;  1°30'
            ANGLE;  1° 30 min
            ANGLE;  0.1 rad
            TORQUE; 0.02 N  mm
            TORQUE; 1 gf⋅cm
            DENSITY; 1.24 g/cm³
            NUMBER; 40%
            NUMBER; 1e-3
            NUMBER; 2/3
            NUMBER; 3 percent
            """)
    void a_quantity_that_reads_matches_the_pattern_of_its_dimension(Dimension dimension, String typed) {
        assertThat(Quantity.parse(dimension, typed).text()).isEqualTo(typed);
        assertThat(Pattern.compile(UnitPattern.of(dimension)).matcher(typed).find())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "LENGTH, 1.25",
        "LENGTH, 1.25 kg",
        "LENGTH, m",
        "LENGTH, 1 furlong",
        "MASS, 4 m",
        "NUMBER, 5 m",
        "TORQUE, 5 N"
    })
    void a_quantity_of_another_unit_does_not_match(Dimension dimension, String typed) {
        assertThat(Pattern.compile(UnitPattern.of(dimension)).matcher(typed).find())
                .isFalse();
    }
}
