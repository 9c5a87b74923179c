// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

/** How a command ended, as the shell is told. */
public enum ExitCode {
    /** What was asked for is done. */
    DONE(0),
    /** The command line, a brief or a train is not in order. */
    BAD_INPUT(2),
    /** Stopped before it was done, by a limit or by the user; what was printed may be incomplete. */
    STOPPED(3),
    /** An export failed, or a plugin is at fault. */
    EXPORT_FAILED(4),
    /** The program itself is at fault. */
    INTERNAL_FAULT(5),
    /** It is proved that no train meets the brief. */
    NO_TRAIN(10),
    /** The rated train misses a demand, or its arbors have no sound places. */
    DEMAND_MISSED(11);

    private final int number;

    ExitCode(int number) {
        this.number = number;
    }

    /** The number the shell sees. */
    public int number() {
        return number;
    }
}
