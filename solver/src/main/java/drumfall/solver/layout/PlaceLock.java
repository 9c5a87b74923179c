// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

/**
 * An arbor that must stand at a place.
 *
 * @param arbor the going train's arbor, from 0 at the drum
 * @param place from the dial centre
 */
public record PlaceLock(int arbor, Place place) {}
