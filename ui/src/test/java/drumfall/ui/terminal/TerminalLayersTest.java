// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "drumfall.ui", importOptions = ImportOption.DoNotIncludeTests.class)
class TerminalLayersTest {
    @ArchTest
    static final ArchRule terminal_and_wording_know_no_window = noClasses()
            .that()
            .resideInAnyPackage("drumfall.ui.terminal", "drumfall.ui.wording")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.awt..", "javax.swing..", "drumfall.ui.app");

    @ArchTest
    static final ArchRule wording_depends_on_the_solver_alone = noClasses()
            .that()
            .resideInAPackage("drumfall.ui.wording")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("drumfall.ui.terminal", "drumfall.ui.plugin", "drumfall.plugin..");
}
