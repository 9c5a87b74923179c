// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

/** What can be violated in a layout, and what asked and found then mean. */
public enum Rule {
    /** Parts that meet along the arbors are clear in the elevation: gap asked, gap found, negative by an overlap. */
    RADIAL_GAP,
    /** Arbors in mesh stand at their centre distance: distance asked, distance found. */
    CENTRE_DISTANCE,
    /** The pallet arbor stands over the escape arbor: 0, and how far it is from there. */
    PALLET_PLACE,
    /** Parts fit the frame's width: width there is, width needed. */
    WIDTH,
    /** Parts fit the frame's height: height there is, height needed. */
    HEIGHT,
    /** Planes, plates and motion work fit the frame's depth: depth there is, depth needed. */
    DEPTH,
    /** The depth stated holds planes, plates and motion work: depth stated, depth needed. More may be stated than needed. */
    STATED_DEPTH,
    /** A part lies within the frame's edge: 0, and the gap to the edge, negative by what stands out. */
    FRAME_EDGE,
    /** Dial centre: distance from the frame's edge asked, distance found. */
    DIAL_CENTRE,
    /** A locked arbor stands at its place: 0, and how far it is from there. */
    LOCKED_PLACE,
    /** A locked mesh runs in its direction: 0, and how far the second arbor is from where it would be. */
    LOCKED_DIRECTION,
    /** A plane is as thick as its parts: thickness asked, thickness found. */
    PLANE_THICKNESS,
    /** Planes of parts on one arbor, or of a part and a plate, are apart: gap asked, gap found. */
    AXIAL_GAP
}
