// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The host knows no window and no exporter. */
@AnalyzeClasses(packages = "drumfall.ui", importOptions = ImportOption.DoNotIncludeTests.class)
class HostLayerTest {
    @ArchTest
    static final ArchRule the_host_has_no_swing = noClasses()
            .that()
            .resideInAPackage("drumfall.ui.plugin")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.awt..", "javax.swing..");

    @ArchTest
    static final ArchRule no_exporter_is_known = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "drumfall.plugin.record..",
                    "drumfall.plugin.outlines..",
                    "drumfall.plugin.solids..",
                    "drumfall.plugin.sheet..");
}
