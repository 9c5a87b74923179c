// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleNameEndingWith;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "drumfall.ui", importOptions = ImportOption.DoNotIncludeTests.class)
class UiLayersTest {
    @ArchTest
    static final ArchRule packages_are_free_of_cycles =
            slices().matching("drumfall.ui.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule each_layer_uses_only_what_stands_before_it = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("design")
            .definedBy("drumfall.ui.design..")
            .layer("work")
            .definedBy("drumfall.ui.work..")
            .layer("presenter")
            .definedBy("drumfall.ui.presenter..")
            .layer("train")
            .definedBy("drumfall.ui.view.train..")
            .layer("look")
            .definedBy("drumfall.ui.view.look..")
            .layer("mesh")
            .definedBy("drumfall.ui.view.mesh..")
            .layer("power")
            .definedBy("drumfall.ui.view.power..")
            .layer("easing")
            .definedBy("drumfall.ui.view.easing..")
            .layer("placed")
            .definedBy("drumfall.ui.view.placed..")
            .layer("view")
            .definedBy("drumfall.ui.view")
            .layer("app")
            .definedBy("drumfall.ui.app..")
            .whereLayer("app")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("view")
            .mayOnlyBeAccessedByLayers("app")
            .whereLayer("look")
            .mayOnlyBeAccessedByLayers("view", "mesh", "power", "placed", "easing", "app")
            .whereLayer("mesh")
            .mayOnlyBeAccessedByLayers("view")
            .whereLayer("power")
            .mayOnlyBeAccessedByLayers("view")
            .whereLayer("easing")
            .mayOnlyBeAccessedByLayers("view")
            .whereLayer("placed")
            .mayOnlyBeAccessedByLayers("view")
            .whereLayer("train")
            .mayOnlyBeAccessedByLayers("view", "mesh", "power", "placed", "easing", "look")
            .whereLayer("presenter")
            .mayOnlyBeAccessedByLayers("train", "look", "mesh", "power", "placed", "easing", "view", "app")
            .whereLayer("work")
            .mayOnlyBeAccessedByLayers("presenter", "app");

    /** Shortcuts change no answer, so that nobody who asks has a choice to make; tests of the solver turn them off. */
    @ArchTest
    static final ArchRule nobody_turns_a_shortcut_of_the_solver_off = noClasses()
            .should()
            .dependOnClassesThat(simpleNameEndingWith("Shortcut").and(resideInAPackage("drumfall.solver..")))
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("drumfall.solver.search.SearchSettings")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("drumfall.solver.search.QuestionSettings");

    @ArchTest
    static final ArchRule presenters_know_no_components = noClasses()
            .that()
            .resideInAnyPackage("drumfall.ui.presenter..", "drumfall.ui.work..", "drumfall.ui.design..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.swing..", "java.awt..");

    @ArchTest
    static final ArchRule only_the_program_makes_threads = noClasses()
            .that()
            .resideInAnyPackage("drumfall.ui.view..", "drumfall.ui.presenter..")
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.concurrent.Executors");

    @ArchTest
    static final ArchRule views_read_no_files = classes()
            .that()
            .resideInAPackage("drumfall.ui.view..")
            .should()
            .onlyDependOnClassesThat()
            .doNotHaveFullyQualifiedName("java.nio.file.Files");
}
