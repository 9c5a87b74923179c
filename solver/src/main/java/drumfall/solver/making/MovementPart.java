// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.making;

import drumfall.solver.making.solid.Solid;
import drumfall.solver.train.ToothModule;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A printed part of a movement.
 *
 * @param name named after its place, lower-case words joined by hyphens, for example {@code arbor-2-wheel-and-pinion}
 * @param count how many of it, at least 1
 * @param material what it is printed of
 * @param density of the printed material, kg/m&sup3;, positive
 * @param teeth its teeth, from the bed up; empty if it has none
 * @param solid its solid
 * @param mount how it stands in the clock
 */
public record MovementPart(
        String name, int count, String material, double density, List<Toothing> teeth, Solid solid, Mount mount) {
    /** Device names of one system are out (Microsoft, Naming Files, Paths, and Namespaces). */
    private static final Pattern NAME =
            Pattern.compile("(?!(con|prn|aux|nul|com[0-9]|lpt[0-9])$)[a-z0-9]+(-[a-z0-9]+)*");

    private static final int LONGEST = 80;

    /**
     * Copies the list and checks name, count and density.
     *
     * @throws IllegalArgumentException if the name does not serve as a file's, there is none of the part or it weighs
     *     nothing
     */
    public MovementPart {
        teeth = List.copyOf(teeth);
        if (!NAME.matcher(name).matches() || name.length() > LONGEST) {
            throw new IllegalArgumentException("The name (" + name + ") of a part must be lower-case words and digits"
                    + " joined by hyphens, at most 80 characters, and no device's. Maybe name it after its arbor.");
        }
        if (count < 1 || !(density > 0)) {
            throw new IllegalArgumentException("The count (" + count + ") of part (" + name
                    + ") must be at least 1 and its density (" + density + " kg/m^3) above 0. Maybe leave it out.");
        }
    }

    /**
     * One set of teeth.
     *
     * @param count teeth or leaves
     * @param module their module
     */
    public record Toothing(int count, ToothModule module) {}

    /** Its height as it lies on the bed, m. */
    public double height() {
        return solid.height() / 1e3;
    }

    /** Volume of one of it, cubic metres. */
    public double volume() {
        return solid.volume() / 1e9;
    }

    /** Mass of one of it, kg. */
    public double mass() {
        return solid.mass(density);
    }

    /** Moment of inertia of one of it about its own axis, kg m&sup2;. */
    public double inertia() {
        return solid.inertia(density);
    }
}
