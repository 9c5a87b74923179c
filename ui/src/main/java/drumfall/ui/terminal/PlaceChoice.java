// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.power.pendulum.NormalGravity;
import drumfall.solver.power.pendulum.Pendulum;
import drumfall.solver.quantity.Quantity;
import picocli.CommandLine.Option;

/** Where the pendulum swings: gravity by latitude and height, or else the standard one. */
final class PlaceChoice {
    @Option(
            names = "--latitude",
            paramLabel = "ANGLE",
            converter = Given.Latitude.class,
            descriptionKey = "option.latitude")
    private Quantity latitude;

    @Option(names = "--height", paramLabel = "LENGTH", converter = Given.Height.class, descriptionKey = "option.height")
    private Quantity height;

    /** Gravity, m/s². */
    double gravity() {
        if (latitude == null) {
            if (height != null) {
                throw RefusedInput.of("needs", "--height", "--latitude");
            }
            return Pendulum.STANDARD_GRAVITY;
        }
        if (Math.abs(latitude.in("°")) > 90) {
            throw RefusedInput.of("latitude", latitude, latitude.si() > 0 ? "90°" : "-90°");
        }
        double metres = height == null ? 0 : height.si();
        if (Math.abs(metres) > 10_000) {
            throw RefusedInput.of("height", height, metres > 0 ? "10000 m" : "-10000 m");
        }
        return NormalGravity.at(latitude.si(), metres);
    }

    boolean standard() {
        return latitude == null;
    }
}
