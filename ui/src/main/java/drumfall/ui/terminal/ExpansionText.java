// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.power.pendulum.RodMaterial;
import picocli.CommandLine.ITypeConverter;

/** Reads how a rod grows: a material's name, or its coefficient for each kelvin as a plain number such as 11.5e-6. */
final class ExpansionText implements ITypeConverter<Double> {
    @Override
    public Double convert(String text) {
        return text.matches("[-+0-9.].*")
                ? new Given.Share().convert(text).si()
                : KindWord.of(text, RodMaterial.values()).expansion();
    }
}
