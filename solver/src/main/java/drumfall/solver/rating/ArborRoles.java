// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.power.ArborRole;

/**
 * The builds of a brief by the role of the arbor.
 *
 * @param arbors the brief's builds
 */
record ArborRoles(Brief.Arbors arbors) {
    Brief.ArborBuild build(ArborRole role) {
        return switch (role) {
            case DRUM -> arbors.drum();
            case CENTRE -> arbors.centre();
            case INTERMEDIATE -> arbors.intermediate();
            case ESCAPE -> arbors.escape();
        };
    }

    /** The builds with another one for a role. */
    Brief.Arbors with(ArborRole role, Brief.ArborBuild other) {
        return new Brief.Arbors(
                role == ArborRole.DRUM ? other : arbors.drum(),
                role == ArborRole.CENTRE ? other : arbors.centre(),
                role == ArborRole.INTERMEDIATE ? other : arbors.intermediate(),
                role == ArborRole.ESCAPE ? other : arbors.escape(),
                arbors.bearing());
    }

    double radius(ArborRole role) {
        return build(role).diameter().si() / 2;
    }
}
