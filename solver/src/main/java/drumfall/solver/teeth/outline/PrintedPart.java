// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.outline;

import java.util.List;

/**
 * One part turning about one arbor: plates of constant section, one on another.
 *
 * @param layers the plates, from the print bed up
 */
public record PrintedPart(List<Layer> layers) {
    private static final double CUBIC_MM = 1e-9;
    private static final double SQUARE_MM = 1e-6;

    /**
     * Checks that there is something.
     *
     * @throws IllegalArgumentException if there is no layer
     */
    public PrintedPart {
        layers = List.copyOf(layers);
        if (layers.isEmpty()) {
            throw new IllegalArgumentException(
                    "The layers (none) of a part must be at least one. Maybe add its wheel.");
        }
    }

    /**
     * A plate of constant section.
     *
     * @param outline its section
     * @param height mm, &gt; 0
     * @param density kg per cubic metre as printed, &gt; 0
     */
    public record Layer(Outline outline, double height, double density) {
        /**
         * Checks the figures.
         *
         * @throws IllegalArgumentException if height or density is not positive
         */
        public Layer {
            if (!(height > 0 && density > 0)) {
                throw new IllegalArgumentException("The height (" + height + " mm) and density (" + density
                        + " kg/m^3) of a layer must be above 0. Maybe check their units.");
            }
        }

        /** Its mass, kg. */
        public double mass() {
            return outline.moments().area() * height * density * CUBIC_MM;
        }

        /** Its moment of inertia about the arbor, kg m^2. */
        public double inertia() {
            return outline.moments().polar() * height * density * CUBIC_MM * SQUARE_MM;
        }
    }

    /** The mass, kg. */
    public double mass() {
        return layers.stream().mapToDouble(Layer::mass).sum();
    }

    /** The moment of inertia about the arbor, kg m^2. */
    public double inertia() {
        return layers.stream().mapToDouble(Layer::inertia).sum();
    }

    /** The radius of gyration about the arbor, m. */
    public double gyration() {
        return Math.sqrt(inertia() / mass());
    }

    /** The height over all layers, mm. */
    public double height() {
        return layers.stream().mapToDouble(Layer::height).sum();
    }
}
