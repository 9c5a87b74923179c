// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.search;

/** What may be done to answer sooner whether trains exist; none of it changes an answer. */
public enum QuestionShortcut {
    /** Whether trains exist is asked with one coarse objective in place of those of the brief; see {@link TrainExistence}. */
    ONE_OBJECTIVE,
    /** The search ends at the first train; see {@link TrainSearch#existence}. */
    FIRST_TRAIN,
    /** Where nothing holds the beat, lengths of pendulum are gone through piece by piece; see {@link TrainExistence}. */
    LENGTHS_IN_PIECES,
    /** A train that was found answers for every set of demands within what it meets; see {@link DemandOracle}. */
    LEARN_FROM_TRAINS,
    /** A set of demands that no train meets answers for every set around it; see {@link DemandOracle}. */
    LEARN_FROM_CLASHES,
    /** A clash thinned demand by demand is known before a smallest one is looked for; see {@link ClashFinder}. */
    THIN_FIRST,
    /** A set of demands that some train meets is widened to all that it meets; see {@link ClashFinder}. */
    WIDEN_MET
}
