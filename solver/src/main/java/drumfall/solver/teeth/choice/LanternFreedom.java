// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.choice;

/**
 * What may be chosen of a lantern pair.
 *
 * @param pinDiameter diameter of a pin, modules
 * @param contactRatio pitches of action the wheel's teeth are made high enough for
 */
public record LanternFreedom(Range pinDiameter, Range contactRatio) {
    /** Pins of a third to half the pitch. */
    public static final LanternFreedom FREE = new LanternFreedom(new Range(0.9, 1.6), new Range(1.0, 1.4));
}
