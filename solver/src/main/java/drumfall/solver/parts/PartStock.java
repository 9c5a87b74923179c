// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.parts;

import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;

/**
 * Sizes and density that all printed parts of a movement share, and the masses that follow.
 *
 * <p>Masses are whole micrograms, so that a sum of parts does not depend on the order in which it is taken.
 *
 * @param wheelThickness thickness of a wheel, m, positive
 * @param pinionLength length of a pinion, m, positive
 * @param solidShare what crossings leave of a wheel's disc, more than 0, at most 1
 * @param density density of the printed material, kg/m&sup3;, positive
 * @param drumLength length of the drum between its flanges, m, positive
 * @param drumWall thickness of the drum's wall and flanges, m, positive
 * @param lineDiameter diameter of the line, m, not negative
 * @param escapeWheelRadius radius of the escape wheel to its tips, m, positive
 */
public record PartStock(
        double wheelThickness,
        double pinionLength,
        double solidShare,
        double density,
        double drumLength,
        double drumWall,
        double lineDiameter,
        double escapeWheelRadius) {
    /** Height of a drum flange above the bare drum in line diameters: one layer and a guard; common practice, no source. */
    private static final double FLANGE_LINES = 3;

    private static final double MICROGRAMS_PER_KILOGRAM = 1e9;

    /**
     * Mass of a wheel in µg: {@code ρ t s π r²} with {@code r} the pitch radius.
     *
     * @param pitchRadius m
     */
    public long wheelMass(double pitchRadius) {
        return micrograms(wheelThickness * solidShare * Math.PI * pitchRadius * pitchRadius);
    }

    /**
     * Mass of a pinion in µg: a solid cylinder of its pitch radius.
     *
     * @param pitchRadius m
     */
    public long pinionMass(double pitchRadius) {
        return micrograms(pinionLength * Math.PI * pitchRadius * pitchRadius);
    }

    /** Mass of the escape wheel in µg, crossed out like the others. */
    public long escapeWheelMass() {
        return wheelMass(escapeWheelRadius);
    }

    /**
     * Mass of the drum in µg: a tube closed by two flanges, solid if the wall reaches the middle.
     *
     * @param diameter bare diameter, m
     */
    public long drumMass(double diameter) {
        double outer = diameter / 2;
        double inner = Math.max(0, outer - drumWall);
        double flange = drumFlangeRadius(diameter);
        return micrograms(Math.PI * ((outer * outer - inner * inner) * drumLength + 2 * flange * flange * drumWall));
    }

    /**
     * Radius of the drum's flanges, m.
     *
     * @param diameter bare diameter, m
     */
    public double drumFlangeRadius(double diameter) {
        return diameter / 2 + FLANGE_LINES * lineDiameter;
    }

    /**
     * Material of the wheel and the pinion of one mesh, µg.
     *
     * @param mesh the mesh
     */
    public long gearMass(Mesh mesh) {
        double module = mesh.module().metres();
        return pinionMass(module * mesh.leafCount() / 2) + wheelMass(module * mesh.toothCount() / 2);
    }

    /**
     * Material printed for the parts that differ from train to train, µg: wheels, pinions, drum and escape wheel.
     *
     * @param train the train
     */
    public long filamentMass(Train train) {
        long gears = train.meshes().stream().mapToLong(this::gearMass).sum();
        return escapeWheelMass() + gears + drumMass(train.drumDiameter().doubleValue());
    }

    private long micrograms(double volume) {
        return Math.round(density * volume * MICROGRAMS_PER_KILOGRAM);
    }
}
