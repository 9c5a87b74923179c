// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.teeth.choice.ToothFamily;
import drumfall.solver.train.ToothModule;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Chooses the teeth of one mesh and prints their geometry and contact. */
@Command(name = "mesh", mixinStandardHelpOptions = true, resourceBundle = Phrases.BUNDLE)
final class MeshCommand implements Callable<Integer> {
    private final TerminalPlace place;

    @Parameters(index = "0", paramLabel = "TEETH", converter = WholeNumber.class, descriptionKey = "option.mesh.teeth")
    private int toothCount;

    @Parameters(
            index = "1",
            paramLabel = "LEAVES",
            converter = WholeNumber.class,
            descriptionKey = "option.mesh.leaves")
    private int leafCount;

    @Option(
            names = "--form",
            paramLabel = "FORM",
            defaultValue = "involute",
            converter = FormReader.class,
            descriptionKey = "option.mesh.form")
    private ToothFamily form;

    @Option(
            names = "--module",
            paramLabel = "LENGTH",
            defaultValue = "1 mm",
            converter = QuantitySpan.Length.class,
            descriptionKey = "option.mesh.module")
    private Quantity module;

    @Option(
            names = "--pressure-angle",
            paramLabel = "ANGLE",
            converter = QuantitySpan.Angle.class,
            descriptionKey = "option.mesh.angle")
    private Quantity pressureAngle;

    @Option(
            names = "--friction",
            paramLabel = "BAND",
            defaultValue = "0.15-0.35",
            converter = QuantitySpan.OfNumbers.class,
            descriptionKey = "option.mesh.friction")
    private QuantitySpan friction;

    @Option(
            names = "--centre-error",
            paramLabel = "LENGTH",
            defaultValue = "0.1 mm",
            converter = QuantitySpan.Length.class,
            descriptionKey = "option.mesh.centreError")
    private Quantity centreError;

    @Option(
            names = "--thinning",
            paramLabel = "BAND",
            defaultValue = "0.05-0.1 mm",
            converter = QuantitySpan.OfLengths.class,
            descriptionKey = "option.mesh.thinning")
    private QuantitySpan thinning;

    @Option(
            names = "--nozzle",
            paramLabel = "LENGTH",
            defaultValue = "0.4 mm",
            converter = QuantitySpan.Length.class,
            descriptionKey = "option.mesh.nozzle")
    private Quantity nozzle;

    @Mixin
    private UnitsChoice units;

    @Option(names = "--json", descriptionKey = "option.json")
    private boolean json;

    MeshCommand(TerminalPlace place) {
        this.place = place;
    }

    @Override
    public Integer call() {
        MeshFigures figures = MeshFigures.of(wish());
        if (json) {
            JsonOutput.print(MeshJson.of(figures), place.out());
        } else {
            new MeshReport(figures, units.system()).lines().forEach(place.out()::println);
        }
        return ExitCode.DONE.number();
    }

    private MeshWish wish() {
        return new MeshWish(
                toothCount,
                leafCount,
                form,
                toothModule(),
                Optional.ofNullable(pressureAngle),
                friction,
                centreError,
                thinning,
                nozzle);
    }

    private ToothModule toothModule() {
        MeshBounds.within(
                "module",
                module,
                Quantity.parse(Dimension.LENGTH, "0.2 mm"),
                Quantity.parse(Dimension.LENGTH, "20 mm"));
        try {
            return ToothModule.ofMetres(module.exact());
        } catch (IllegalArgumentException fraction) {
            double nearest = Math.rint(module.in("mm") * 1e6) / 1e6;
            throw RefusedInput.of("mesh.nanometres", module.text(), nearest);
        }
    }

    /** Reads a family of tooth forms. */
    static final class FormReader implements ITypeConverter<ToothFamily> {
        @Override
        public ToothFamily convert(String text) {
            return Arrays.stream(ToothFamily.values())
                    .filter(family -> JsonOutput.word(family).equals(text))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException(Phrases.phrase("refused.mesh.form", text, words())));
        }

        private static String words() {
            return Arrays.stream(ToothFamily.values()).map(JsonOutput::word).collect(Collectors.joining(", "));
        }
    }
}
