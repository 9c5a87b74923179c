// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

/** What an explanation may do to be quicker; none of it changes what is explained. */
enum ExplainShortcut {
    /** A clash is thinned no further once the demands found to be needed clash by themselves; see {@link ClashLister}. */
    NEEDED_ALONE,
    /** Everything within what a known train meets is marked off, not only what was asked; see {@link ClashLister}. */
    MARK_WIDENED,
    /** A clash that a figure cannot touch answers for the figure; see {@link NearestValues}. */
    CLASH_STANDS,
    /** Where trains are only added, steps are halved and not gone through one by one; see {@link NearestValues}. */
    HALVE_STEPS,
    /** A train that was found is rated at tighter values; see {@link NearestValues}. */
    RATE_TIGHTER,
    /** Where the weight is eased, the lightest train is asked for and not any; see {@link NearestValues}. */
    LIGHTEST_AT_ONCE,
    /** Demands that easing hardens are set aside at first; see {@link NearestValues}. */
    SET_ASIDE,
    /** Only trains that tighter values do not have are looked for; see {@link NewTrains}. */
    NEW_TRAINS_ONLY,
    /** Several heights of fall are asked about at once; see {@link FallSpans}. */
    FALL_SPANS,
    /** No train heavier than the chosen one is looked at; see {@link DemandCosts}. */
    NO_HEAVIER
}
