// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class TerminalLayersTest {
    private static final JavaClasses UI = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("drumfall.ui");

    @Test
    void terminal_and_wording_know_no_window() {
        noClasses()
                .that()
                .resideInAnyPackage("drumfall.ui.terminal", "drumfall.ui.wording")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.swing..", "drumfall.ui.app")
                .check(UI);
    }

    @Test
    void wording_depends_on_the_solver_alone() {
        noClasses()
                .that()
                .resideInAPackage("drumfall.ui.wording")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("drumfall.ui.terminal", "drumfall.ui.plugin", "drumfall.plugin..")
                .check(UI);
    }
}
