// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import drumfall.solver.sheet.SheetProblem;
import java.util.List;

/** The rules that hold between the fields of a brief. */
final class BriefChecks {
    private BriefChecks() {}

    static List<SheetProblem> problems(Brief brief) {
        return List.of();
    }
}
