// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.presenter.EasingSheet;
import drumfall.ui.presenter.MeshSheet;
import drumfall.ui.presenter.PlacedSheet;
import drumfall.ui.presenter.PowerSheet;
import drumfall.ui.presenter.TriedTrain;

/**
 * What the sheets of the drawing show.
 *
 * @param placed where the arbors stand
 * @param mesh the mesh looked into
 * @param power where the power goes
 * @param easing what easing the brief would buy
 * @param tried how the tried train stands
 */
public record DrawingSheets(
        PlacedSheet placed, MeshSheet mesh, PowerSheet power, EasingSheet easing, TriedTrain tried) {}
