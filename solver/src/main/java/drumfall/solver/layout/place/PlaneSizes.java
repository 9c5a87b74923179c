// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.place;

import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.size.Gaps;
import drumfall.solver.layout.size.MeshSpacing;
import java.util.List;
import java.util.stream.LongStream;

/**
 * What the planes between the plates take along the arbors.
 *
 * @param gears thickness of the planes of mesh 0 to the last from the drum, then of escape wheel and pallets, nm
 * @param drum length of the drum over its flanges, nm
 * @param clickSpace room between the plane of the great wheel and the drum, nm
 * @param gaps the room that planes leave each other
 */
public record PlaneSizes(List<Long> gears, long drum, long clickSpace, Gaps gaps) {
    /** Copies the list. */
    public PlaneSizes {
        gears = List.copyOf(gears);
    }

    static PlaneSizes of(LayoutNeed need) {
        LongStream meshes = need.parts().meshes().stream().mapToLong(MeshSpacing::planeThickness);
        LongStream escape = LongStream.of(need.parts().escape().thickness());
        return new PlaneSizes(
                LongStream.concat(meshes, escape).boxed().toList(),
                need.parts().drum().length(),
                need.parts().drum().clickSpace(),
                need.gaps());
    }
}
