// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.train.Mesh;

/**
 * How a mesh departs from its drawing while it is looked at.
 *
 * @param centreError real less nominal centre distance, m
 * @param thinning taken off each tooth along its pitch circle, both flanks together, m
 * @param friction coefficient of friction at the teeth, 0 to 1
 */
public record MeshSetting(double centreError, double thinning, double friction) {
    /** What can be set. */
    public enum Dial {
        /** Real less nominal centre distance. */
        CENTRE_ERROR,
        /** What is taken off each tooth. */
        THINNING,
        /** Coefficient of friction. */
        FRICTION
    }

    /**
     * How far a dial goes, and the brief's band on it.
     *
     * @param least where the dial begins, SI
     * @param most where it ends, SI
     * @param low least to expect by the brief, SI
     * @param high most to expect by the brief, SI
     */
    public record Travel(double least, double most, double low, double high) {
        /** The middle of the band. */
        public double middle() {
            return (low + high) / 2;
        }
    }

    /** Dials go this share of the module beyond what the brief expects, so that it is seen where teeth jam or let go. */
    private static final double BEYOND = 0.3;

    private static final double MOST_FRICTION = 1;

    /** The middle of every band of a brief. */
    static MeshSetting middle(Brief brief, Mesh mesh) {
        return new MeshSetting(
                travel(Dial.CENTRE_ERROR, brief, mesh).middle(),
                travel(Dial.THINNING, brief, mesh).middle(),
                travel(Dial.FRICTION, brief, mesh).middle());
    }

    static Travel travel(Dial dial, Brief brief, Mesh mesh) {
        double beyond = BEYOND * mesh.module().metres();
        return switch (dial) {
            case CENTRE_ERROR -> {
                double error = brief.teeth().centreError().si();
                yield new Travel(-error - beyond, error + beyond, -error, error);
            }
            case THINNING -> {
                double low = brief.teeth().thinning().low().si();
                double high = brief.teeth().thinning().high().si();
                yield new Travel(0, high + beyond, low, high);
            }
            case FRICTION ->
                new Travel(
                        0,
                        MOST_FRICTION,
                        brief.friction().teeth().low().si(),
                        brief.friction().teeth().high().si());
        };
    }

    /** What a dial stands at, SI. */
    public double at(Dial dial) {
        return switch (dial) {
            case CENTRE_ERROR -> centreError;
            case THINNING -> thinning;
            case FRICTION -> friction;
        };
    }

    MeshSetting with(Dial dial, double value) {
        return switch (dial) {
            case CENTRE_ERROR -> new MeshSetting(value, thinning, friction);
            case THINNING -> new MeshSetting(centreError, value, friction);
            case FRICTION -> new MeshSetting(centreError, thinning, value);
        };
    }
}
