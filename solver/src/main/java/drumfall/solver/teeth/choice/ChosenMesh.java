// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.choice;

import drumfall.solver.teeth.contact.ContactBand;
import drumfall.solver.teeth.form.MeshPair;

/**
 * A pair of gears chosen for a mesh, with what it does over the band of errors.
 *
 * @param family the family it comes from
 * @param pair the gears at module 1, the first driving
 * @param band its contact as drawn and at the ends of the band
 */
public record ChosenMesh(ToothFamily family, MeshPair pair, ContactBand band) {
    /** The least torque ratio at any phase anywhere in the band, as a share of the nominal ratio. */
    public double worstTorque() {
        return band.all().stream().mapToDouble(c -> c.worstTorque()).min().orElseThrow();
    }
}
