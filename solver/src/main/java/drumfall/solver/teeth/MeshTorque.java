// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

/** What a mesh passes on under friction. */
public interface MeshTorque {
    /**
     * Efficiency over one pitch as drawn, the wheel driving.
     *
     * @param friction coefficient of friction at the teeth, 0 to 1
     */
    EfficiencyCurve curve(double friction);

    /**
     * The least torque ratio at any phase anywhere in the band of errors, as a share of the nominal ratio; negative where
     * the mesh binds.
     *
     * @param friction coefficient of friction at the teeth, 0 to 1
     */
    double worstOverBand(double friction);
}
