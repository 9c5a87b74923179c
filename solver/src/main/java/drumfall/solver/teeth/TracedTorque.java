// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth;

import drumfall.solver.teeth.contact.ContactPath;
import drumfall.solver.teeth.contact.ContactSample;
import drumfall.solver.teeth.contact.MeshContact;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Torque by the contact of the drawn flanks; a coefficient of friction once asked for costs nothing again. */
final class TracedTorque implements MeshTorque {
    private final List<ContactPath> paths;
    private final Map<Double, EfficiencyCurve> curves = new ConcurrentHashMap<>();

    /**
     * Torque of traced paths.
     *
     * @param paths as drawn first, then at the ends of the band of errors
     */
    TracedTorque(List<ContactPath> paths) {
        this.paths = List.copyOf(paths);
    }

    @Override
    public EfficiencyCurve curve(double friction) {
        return curves.computeIfAbsent(friction, this::trace);
    }

    @Override
    public double worstOverBand(double friction) {
        return paths.stream()
                .mapToDouble(path -> path.withFriction(friction).worstTorque())
                .min()
                .orElseThrow();
    }

    private EfficiencyCurve trace(double friction) {
        MeshContact contact = paths.get(0).withFriction(friction);
        double[] samples = contact.samples().stream()
                .mapToDouble(ContactSample::efficiency)
                .map(TracedTorque::share)
                .toArray();
        double worst = share(contact.worst());
        // Without friction both are 1, give or take rounding.
        return EfficiencyCurve.of(worst, Math.max(worst, share(contact.mean())), samples);
    }

    /** Below 0 the mesh binds and passes nothing; without friction rounding may reach a hair above 1. */
    private static double share(double efficiency) {
        return Math.min(1, Math.max(0, efficiency));
    }
}
