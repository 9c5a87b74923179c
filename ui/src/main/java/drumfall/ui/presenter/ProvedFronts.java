// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Remembers fronts that are proved, so that undoing an edit does not search again. */
final class ProvedFronts {
    /** Fronts remembered; each holds some dozens of trains. */
    private static final int MOST = 30;

    private final Map<ObjectNode, Front> fronts = new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<ObjectNode, Front> eldest) {
            return size() > MOST;
        }
    };

    void keep(Front front) {
        if (front.standing() == Front.Standing.PROVED || front.standing() == Front.Standing.NO_TRAIN) {
            fronts.put(SameDemands.nameless(front.brief()), front);
        }
    }

    Optional<Front> of(Brief brief) {
        return Optional.ofNullable(fronts.get(SameDemands.nameless(brief)));
    }
}
