// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.parts.RatchetForm;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.SheetProblem;
import java.math.BigInteger;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Lists hold each entry once, and printed parts fit the printer. */
final class PartRules {
    private static final BigFraction NANOMETRES_PER_METRE = BigFraction.of(1_000_000_000);

    private PartRules() {}

    static Stream<SheetProblem> fallsDiffer(Brief brief) {
        List<Integer> falls = brief.line().falls();
        return IntStream.range(0, falls.size())
                .boxed()
                .flatMap(index -> Clash.unless(
                        falls.indexOf(falls.get(index)) == index,
                        "/line/falls/" + index,
                        String.valueOf(falls.get(index)),
                        "each number of falls may be listed once",
                        "remove the repetition"));
    }

    static Stream<SheetProblem> modulesAreWholeNanometres(Brief brief) {
        List<Quantity> modules = brief.teeth().modules();
        return IntStream.range(0, modules.size())
                .boxed()
                .flatMap(index -> wholeNanometres("/teeth/modules/" + index, modules.get(index)));
    }

    /** Modules are kept as whole nanometres, which keeps centre distances exact. */
    static Stream<SheetProblem> wholeNanometres(String pointer, Quantity module) {
        BigInteger denominator =
                module.exact().multiply(NANOMETRES_PER_METRE).getDenominator().abs();
        return Clash.unless(
                denominator.equals(BigInteger.ONE),
                pointer,
                module,
                "a module must be a whole number of nanometres",
                "write it in mm with at most six decimals");
    }

    static Stream<SheetProblem> modulesDiffer(Brief brief) {
        List<Quantity> modules = brief.teeth().modules();
        return IntStream.range(0, modules.size())
                .boxed()
                .flatMap(index -> Clash.unless(
                        modules.subList(0, index).stream().noneMatch(modules.get(index)::sameValueAs),
                        "/teeth/modules/" + index,
                        modules.get(index),
                        "each module may be listed once",
                        "remove the repetition"));
    }

    static Stream<SheetProblem> wheelHasTwoLayers(Brief brief) {
        Quantity thickness = brief.parts().wheelThickness();
        Quantity layer = brief.printer().layer();
        return Clash.unless(
                thickness.exact().compareTo(layer.exact().multiply(2)) >= 0,
                "/parts/wheelThickness",
                thickness,
                "a wheel must be at least two layers (\"%s\" each) thick".formatted(layer),
                "make the wheel thicker or the layer thinner");
    }

    static Stream<SheetProblem> layerIsWithinTheNozzle(Brief brief) {
        Quantity layer = brief.printer().layer();
        Quantity nozzle = brief.printer().nozzle();
        return Clash.unless(
                layer.compareTo(nozzle) <= 0,
                "/printer/layer",
                layer,
                "a layer must not be higher than the nozzle (\"%s\") is wide".formatted(nozzle),
                "lower the layer or fit a wider nozzle");
    }

    static Stream<SheetProblem> firstLayerIsWithinTheNozzle(Brief brief) {
        Quantity layer = brief.fit().firstLayer();
        Quantity nozzle = brief.printer().nozzle();
        return Clash.unless(
                layer.compareTo(nozzle) <= 0,
                "/fit/firstLayer",
                layer,
                "a layer must not be higher than the nozzle (\"%s\") is wide".formatted(nozzle),
                "lower the first layer or fit a wider nozzle");
    }

    static Stream<SheetProblem> bearingsHaveARing(Brief brief) {
        Brief.Arbors arbors = brief.arbors();
        return Stream.of(
                        ring("drum", arbors.drum()),
                        ring("centre", arbors.centre()),
                        ring("intermediate", arbors.intermediate()),
                        ring("escape", arbors.escape()))
                .flatMap(problems -> problems);
    }

    static Stream<SheetProblem> ratchetHasRoom(Brief brief) {
        Quantity room = brief.drum().clickSpace();
        return brief.drum().ratchet().stream()
                .flatMap(ratchet -> Clash.unless(
                        ratchet.thickness().compareTo(room) <= 0,
                        "/drum/ratchet/thickness",
                        ratchet.thickness(),
                        "ratchet and click must find room (\"%s\") between great wheel and drum".formatted(room),
                        "make the ratchet thinner or leave more room"));
    }

    /** Ratchet and click are a layer thick at least, and have a layer of play. */
    static Stream<SheetProblem> clickSpaceTakesARatchet(Brief brief) {
        Quantity room = brief.drum().clickSpace();
        Quantity layer = brief.printer().layer();
        return Clash.unless(
                room.exact().compareTo(layer.exact().multiply(2)) >= 0,
                "/drum/clickSpace",
                room,
                "a ratchet and its play take two layers (\"%s\" each) at least between great wheel and drum"
                        .formatted(layer),
                "leave more room or print in thinner layers");
    }

    /** The click's nose is four nozzle widths thick and bears in its middle. */
    static Stream<SheetProblem> clickRestsOnTheTeeth(Brief brief) {
        Quantity nozzle = brief.printer().nozzle();
        return brief.drum().ratchet().stream()
                .flatMap(ratchet -> Clash.unless(
                        ratchet.toothDepth().exact().compareTo(nozzle.exact().multiply(2)) > 0,
                        "/drum/ratchet/toothDepth",
                        ratchet.toothDepth(),
                        "a ratchet's teeth must be deeper than two nozzle widths (\"%s\" each), where the click bears"
                                .formatted(nozzle),
                        "make the teeth deeper or fit a finer nozzle"));
    }

    /**
     * The key's square is held by the drum's rod, in front of the plate, and drum and ratchet are held by it behind: it winds
     * only if the rod turns. A drum that turned on a standing rod would need a square of its own that leads through the plate
     * around the rod, and the plate a bore for it as wide as a barrel's; the trade files the square on the barrel's arbor.
     */
    static Stream<SheetProblem> drumTurnsWithItsRod(Brief brief) {
        return Clash.unless(
                brief.arbors().drum().kind() == Brief.ArborKind.TURNING,
                "/arbors/drum/kind",
                "\"fixed\"",
                "the drum's rod must turn with the drum, for the drum is wound by the square on its rod",
                "write \"turning\"");
    }

    private static Stream<SheetProblem> ring(String arbor, Brief.ArborBuild build) {
        return build.bearing().stream()
                .flatMap(bearing -> Clash.unless(
                        bearing.outer().compareTo(build.diameter()) > 0,
                        "/arbors/" + arbor + "/bearing/outer",
                        bearing.outer(),
                        "a bearing's outer diameter must be more than its rod (\"%s\")".formatted(build.diameter()),
                        "take a larger bearing or a thinner rod"));
    }

    /** The smallest drum has room for the pins of its ratchet around its arbor. */
    static Stream<SheetProblem> drumTakesItsRatchet(Brief brief) {
        Quantity from = brief.drum().diameter().from();
        double least = RatchetForm.leastDrum(
                brief.fit().largestBore(brief.arbors().drum()),
                2 * brief.printer().nozzle().si());
        return Clash.unless(
                from.si() >= least,
                "/drum/diameter/from",
                from,
                "a drum must be at least %.2f mm thick, for the pins of its ratchet around an arbor of \"%s\""
                        .formatted(
                                Math.ceil(1e5 * least) / 1e2,
                                brief.arbors().drum().diameter()),
                "make it thicker, or its arbor thinner");
    }
}
