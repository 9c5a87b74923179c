// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.util.List;

/**
 * The parent of every plugin's class loader: it shows the JDK, the plugin api, the solver's records and the fractions
 * they are made of, and hides everything else on the program's class path, resources included.
 */
final class ApiOnlyLoader extends ClassLoader {
    /** Packages a {@code Handover} leads to; the rules and the search are not among them. */
    private static final List<String> SHOWN = List.of(
            "drumfall.plugin.api",
            "drumfall.solver.quantity",
            "drumfall.solver.sheet",
            "drumfall.solver.ratio",
            "drumfall.solver.train",
            "drumfall.solver.teeth",
            "drumfall.solver.teeth.flank",
            "drumfall.solver.teeth.form",
            "drumfall.solver.teeth.contact",
            "drumfall.solver.teeth.outline",
            "drumfall.solver.parts",
            "drumfall.solver.layout",
            "drumfall.solver.layout.size",
            "drumfall.solver.layout.check",
            "drumfall.solver.layout.written",
            "drumfall.solver.fit",
            "drumfall.solver.fit.layer",
            "drumfall.solver.fit.bore",
            "drumfall.solver.fit.shake",
            "drumfall.solver.fit.cutting",
            "drumfall.solver.power",
            "drumfall.solver.power.answers",
            "drumfall.solver.power.books",
            "drumfall.solver.power.escape",
            "drumfall.solver.power.pendulum",
            "drumfall.solver.brief",
            "drumfall.solver.rating",
            "drumfall.solver.rating.answers",
            "drumfall.solver.rating.placing",
            "drumfall.solver.fitting",
            "drumfall.solver.making",
            "drumfall.solver.kit",
            "drumfall.solver.making.part",
            "drumfall.solver.making.solid",
            "org.apache.commons.numbers.fraction");

    private final ClassLoader program;

    ApiOnlyLoader(ClassLoader program) {
        super("plugin api", ClassLoader.getPlatformClassLoader());
        this.program = program;
    }

    /** Asked only for what the JDK does not have. */
    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        int dot = name.lastIndexOf('.');
        if (dot > 0 && SHOWN.contains(name.substring(0, dot))) {
            return program.loadClass(name);
        }
        throw new ClassNotFoundException(name);
    }
}
