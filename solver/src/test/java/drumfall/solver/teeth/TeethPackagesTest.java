// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class TeethPackagesTest {
    private static final JavaClasses TEETH = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("drumfall.solver.teeth");

    @Test
    void the_packages_of_teeth_form_no_cycle() {
        slices().matching("drumfall.solver.teeth.(*)..")
                .should()
                .beFreeOfCycles()
                .check(TEETH);
    }

    @Test
    void teeth_know_no_window_toolkit_and_no_constraint_solver() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.swing..", "org.chocosolver..")
                .check(TEETH);
    }

    @Test
    void flanks_know_nothing_of_the_layers_above_them() {
        noClasses()
                .that()
                .resideInAPackage("..teeth.flank..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("..teeth.form..", "..teeth.contact..", "..teeth.outline..", "..teeth.choice..")
                .check(TEETH);
    }
}
