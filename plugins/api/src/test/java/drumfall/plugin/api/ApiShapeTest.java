// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The api stays small, marked and free of the program's libraries. */
@AnalyzeClasses(packages = "drumfall.plugin.api", importOptions = ImportOption.DoNotIncludeTests.class)
class ApiShapeTest {
    @ArchTest
    static final ArchRule every_public_type_says_how_far_it_may_be_relied_on =
            classes().that().arePublic().and().areTopLevelClasses().should().beAnnotatedWith(Stability.class);

    @ArchTest
    static final ArchRule the_api_shows_only_the_solver_and_the_jdk = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java..", "drumfall.plugin.api..", "drumfall.solver..", "org.apache.commons.numbers.fraction");

    @Test
    void an_exporter_has_at_most_four_abstract_methods() {
        assertThat(Arrays.stream(Exporter.class.getMethods())
                        .filter(method -> Modifier.isAbstract(method.getModifiers())))
                .hasSizeLessThanOrEqualTo(4)
                .extracting(java.lang.reflect.Method::getName)
                .containsExactlyInAnyOrder("id", "title", "export");
    }
}
