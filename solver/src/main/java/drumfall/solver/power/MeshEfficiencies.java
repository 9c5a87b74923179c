// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.power;

import drumfall.solver.teeth.EfficiencyCurve;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The efficiency curves of a movement's meshes, each computed once; the module scales out. */
public final class MeshEfficiencies {
    private final Movement movement;
    private final Map<Integer, EfficiencyCurve> running = new ConcurrentHashMap<>();
    private final Map<Integer, EfficiencyCurve> starting = new ConcurrentHashMap<>();

    /**
     * An empty table.
     *
     * @param movement gives tooth form and friction
     */
    public MeshEfficiencies(Movement movement) {
        this.movement = movement;
    }

    /**
     * The curve of one pair of counts.
     *
     * @param criterion which friction
     * @param toothCount teeth of the wheel
     * @param leafCount leaves of the pinion
     */
    public EfficiencyCurve curve(Criterion criterion, int toothCount, int leafCount) {
        Map<Integer, EfficiencyCurve> curves = criterion == Criterion.RUNNING ? running : starting;
        return curves.computeIfAbsent(
                toothCount << 16 | leafCount,
                key -> movement.teeth()
                        .curve(toothCount, leafCount, movement.regime(criterion).toothFriction()));
    }

    /**
     * What the criterion lets through of a mesh.
     *
     * @param criterion felt through the pendulum's memory when running, the worst phase when binding
     * @param toothCount teeth of the wheel
     * @param leafCount leaves of the pinion
     * @param pitchesRemembered pendulum's memory over the time of one pitch
     */
    public double passed(Criterion criterion, int toothCount, int leafCount, double pitchesRemembered) {
        EfficiencyCurve curve = curve(criterion, toothCount, leafCount);
        return criterion == Criterion.RUNNING ? curve.felt(pitchesRemembered) : curve.worst();
    }
}
