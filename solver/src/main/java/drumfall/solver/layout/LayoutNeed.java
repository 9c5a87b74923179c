// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import drumfall.solver.layout.size.DialPlace;
import drumfall.solver.layout.size.Envelope;
import drumfall.solver.layout.size.Gaps;
import drumfall.solver.layout.size.HangingLine;
import drumfall.solver.layout.size.MovementParts;
import drumfall.solver.layout.size.Nanometres;
import java.util.OptionalLong;

/**
 * All that is asked of a layout.
 *
 * @param parts what is to be placed
 * @param line the line and the weight's path
 * @param gaps the room parts must leave each other
 * @param envelope the frame
 * @param locks what the maker has locked
 * @param preference which layout is preferred
 * @param grid the directions in which a mesh that is not locked may run
 */
public record LayoutNeed(
        MovementParts parts,
        HangingLine line,
        Gaps gaps,
        Envelope envelope,
        Locks locks,
        Preference preference,
        AngleGrid grid) {
    /**
     * Checks that the locks name what exists and do not contradict each other by themselves.
     *
     * @throws IllegalArgumentException if a lock names no arbor or mesh, moves the centre arbor off the dial centre, or
     *     sets two neighbours at another distance or in another direction than locked
     */
    public LayoutNeed {
        LockClaims.check(parts, locks);
    }

    /** The centre distance of a mesh, or of the motion work if the number is that of the meshes, nm. */
    public long centreDistance(int mesh) {
        return mesh < parts.meshes().size()
                ? parts.meshes().get(mesh).centreDistance()
                : parts.motion().orElseThrow().centreDistance();
    }

    /** This need with other locks. */
    public LayoutNeed with(Locks changed) {
        return new LayoutNeed(parts, line, gaps, envelope, changed, preference, grid);
    }

    /** This need with another preference. */
    public LayoutNeed with(Preference changed) {
        return new LayoutNeed(parts, line, gaps, envelope, locks, changed, grid);
    }

    /** This need with another envelope. */
    public LayoutNeed with(Envelope changed) {
        return new LayoutNeed(parts, line, gaps, changed, locks, preference, grid);
    }

    /** This need with another grid. */
    public LayoutNeed with(AngleGrid changed) {
        return new LayoutNeed(parts, line, gaps, envelope, locks, preference, changed);
    }

    /** How far a locked place may be from a centre distance, nm: a micrometre. */
    static long distanceTolerance() {
        return Nanometres.PER_MICROMETRE;
    }

    /** This need as seen in a mirror on the dial's vertical; a pallet arbor off the vertical changes sides too. */
    public LayoutNeed mirrored() {
        DialPlace place = envelope.dialPlace();
        OptionalLong fromRight = place.fromLeft().isPresent()
                ? OptionalLong.of(envelope.width() - place.fromLeft().getAsLong())
                : OptionalLong.empty();
        Envelope frame = new Envelope(
                envelope.width(),
                envelope.height(),
                envelope.depth(),
                envelope.plateThickness(),
                envelope.pillars(),
                new DialPlace(fromRight, place.fromBottom()));
        return new LayoutNeed(parts.mirrored(), line.mirrored(), gaps, frame, locks.mirrored(), preference, grid);
    }
}
