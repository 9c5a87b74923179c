// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What may know what in the solver. */
class LayersTest {
    private static final String ROOT = "drumfall.solver.";

    /** Each package may use only those before it. */
    private static final List<String> ORDER = List.of(
            "quantity",
            "sheet",
            "ratio",
            "train",
            "display",
            "teeth",
            "parts",
            "layout",
            "fit",
            "power",
            "brief",
            "rating",
            "fitting",
            "making",
            "kit",
            "halves",
            "rules",
            "search",
            "explain");

    private static final JavaClasses SOLVER = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("drumfall.solver");

    @Test
    void no_packages_form_a_cycle_at_any_depth() {
        slices().assignedFrom(new EveryPackage()).should().beFreeOfCycles().check(SOLVER);
    }

    @Test
    void every_package_uses_only_those_before_it() {
        for (String name : ORDER) {
            String[] allowed = ORDER.subList(0, ORDER.indexOf(name) + 1).stream()
                    .map(before -> ROOT + before + "..")
                    .toArray(String[]::new);
            classes()
                    .that()
                    .resideInAPackage(ROOT + name + "..")
                    .should()
                    .onlyDependOnClassesThat(JavaClass.Predicates.resideOutsideOfPackage("drumfall..")
                            .or(JavaClass.Predicates.resideInAnyPackage(allowed)))
                    .check(SOLVER);
        }
    }

    @Test
    void every_package_has_its_place_in_the_order() {
        Set<String> found = SOLVER.stream()
                .map(JavaClass::getPackageName)
                .map(name -> name.substring(ROOT.length()))
                .map(name -> name.contains(".") ? name.substring(0, name.indexOf('.')) : name)
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(found).isEqualTo(new TreeSet<>(ORDER));
    }

    @Test
    void only_the_rules_know_the_constraint_solver() {
        noClasses()
                .that()
                .resideOutsideOfPackage(ROOT + "rules")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.chocosolver..")
                .check(SOLVER);
    }

    @Test
    void the_rules_show_one_public_type() {
        List<String> open = SOLVER.stream()
                .filter(type -> type.getPackageName().equals(ROOT + "rules"))
                .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
                .map(JavaClass::getSimpleName)
                .filter(name -> !name.equals("package-info"))
                .toList();

        assertThat(open).containsExactly("TrainRules");
    }

    @Test
    void the_solver_draws_nothing_and_opens_no_window() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.swing..", "java.beans..", "javax.imageio..", "javax.print..")
                .check(SOLVER);
    }

    @Test
    void the_solver_knows_neither_plugins_nor_user_interface() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("drumfall.ui..", "drumfall.plugin..")
                .check(SOLVER);
    }

    @Test
    void the_solver_prints_nothing_and_logs_nothing() {
        NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(SOLVER);
        NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING.check(SOLVER);
    }

    @Test
    void exceptions_say_what_they_are() {
        NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS.check(SOLVER);
    }

    /** Each package by its whole name, so that a cycle between a package and its own child is one too. */
    private static final class EveryPackage implements SliceAssignment {
        @Override
        public SliceIdentifier getIdentifierOf(JavaClass type) {
            JavaPackage own = type.getPackage();
            return own.getName().startsWith("drumfall.") ? SliceIdentifier.of(own.getName()) : SliceIdentifier.ignore();
        }

        @Override
        public String getDescription() {
            return "every package";
        }
    }
}
