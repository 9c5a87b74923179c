// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class LayoutPackagesTest {
    private static final JavaClasses LAYOUT = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("drumfall.solver.layout");

    @Test
    void the_check_knows_nothing_of_the_placer() {
        noClasses()
                .that()
                .resideInAPackage("..layout.check..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("..layout.place..", "..layout.drag..")
                .check(LAYOUT);
    }

    @Test
    void the_placer_knows_nothing_of_the_check() {
        noClasses()
                .that()
                .resideInAnyPackage("..layout.place..", "..layout.drag..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("..layout.check..")
                .check(LAYOUT);
    }

    /** The list of parts for drawings is not the check's: it would carry an error of the one into the other. */
    @Test
    void the_check_lists_the_parts_itself() {
        noClasses()
                .that()
                .resideInAPackage("..layout.check..")
                .should()
                .callMethod(Layout.class, "discs")
                .check(LAYOUT);
    }

    @Test
    void sizes_know_nothing_of_layouts() {
        noClasses()
                .that()
                .resideInAPackage("..layout.size..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("drumfall.solver.layout", "..layout.check..", "..layout.place..", "..layout.drag..")
                .check(LAYOUT);
    }
}
