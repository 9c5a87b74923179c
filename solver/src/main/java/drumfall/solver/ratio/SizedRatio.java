// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.ratio;

/**
 * The nearest ratio that wheels and pinions of a limited size can give.
 *
 * @param largestCount teeth of the largest wheel or pinion; no smaller one gives as near a ratio
 * @param entry the ratio with its trains of that size
 */
public record SizedRatio(int largestCount, RatioEntry entry) {}
