// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating;

import drumfall.solver.brief.Brief;
import drumfall.solver.parts.RatchetForm;
import drumfall.solver.power.Movement;
import drumfall.solver.power.answers.RatchetHold;
import drumfall.solver.train.Reeving;
import java.util.Optional;
import java.util.Set;

/**
 * The demand on the ratchet: that one of its teeth holds the whole pull of the line at rest.
 *
 * <p>The stress rises with the weight alone, so the claim is that the weight is at most the heaviest that drum and reeving
 * let the tooth hold. The bore is taken as thick as the arbor's rod; a bore that runs on its rod is wider and its ratchet
 * larger, so this is to the safe side.
 */
public final class RatchetLimits {
    private final Brief brief;
    private final RatchetForm form;
    private final double gravity;
    private final boolean waived;

    RatchetLimits(Brief brief, Movement movement, double wall, Set<Demand> waived) {
        this.brief = brief;
        this.form = new RatchetForm(
                BriefParts.ratchet(brief),
                brief.arbors().drum().diameter().si(),
                brief.drum().wall().si(),
                wall);
        this.gravity = movement.pendulum().gravity();
        this.waived = waived.contains(Demand.RATCHET);
    }

    /** The ratchet. */
    public RatchetForm form() {
        return form;
    }

    /**
     * Force between click and tooth, N.
     *
     * @param weight kg
     * @param lineArm arm of the line about the drum's axis, m
     * @param reeving how the line carries the weight
     */
    public double force(double weight, double lineArm, Reeving reeving) {
        return pull(weight, reeving) * lineArm / form.contactRadius();
    }

    private double pull(double weight, Reeving reeving) {
        return weight * gravity / reeving.falls();
    }

    /**
     * Ratchet and click under a weight at rest; empty if the click does not rest on the teeth.
     *
     * @param weight kg, finite
     * @param lineArm arm of the line about the drum's axis, m
     * @param reeving how the line carries the weight
     */
    public Optional<RatchetHold> hold(double weight, double lineArm, Reeving reeving) {
        return Double.isInfinite(form.bendingHeight())
                ? Optional.empty()
                : Optional.of(new RatchetHold(
                        pull(weight, reeving),
                        lineArm,
                        form.contactRadius(),
                        form.bendingHeight(),
                        form.rootThickness(),
                        form.size().thickness(),
                        form.size().pin()));
    }

    /**
     * The heaviest weight that a tooth holds, {@code k σ b t² r / (6 h g r_l)}, kg; 0 if the click does not rest on the teeth.
     *
     * @param lineArm arm of the line about the drum's axis, m
     * @param reeving how the line carries the weight
     */
    public double heaviest(double lineArm, Reeving reeving) {
        double thickness = form.rootThickness();
        double force = allowable() * form.size().thickness() * thickness * thickness / (6 * form.bendingHeight());
        return force * form.contactRadius() * reeving.falls() / (gravity * lineArm);
    }

    /** Greatest bending stress that the material bears, Pa. */
    public double allowable() {
        return brief.material().allowable().si();
    }

    /**
     * Bending stress at the tooth's root, Pa; infinite if no tooth holds any weight.
     *
     * @param weight kg
     * @param lineArm arm of the line about the drum's axis, m
     * @param reeving how the line carries the weight
     */
    double stress(double weight, double lineArm, Reeving reeving) {
        return allowable() * (weight / heaviest(lineArm, reeving));
    }

    /**
     * The ratchet holds the weight.
     *
     * @param weight kg
     * @param lineArm arm of the line about the drum's axis, m
     * @param reeving how the line carries the weight
     */
    public boolean holds(double weight, double lineArm, Reeving reeving) {
        return waived || weight <= heaviest(lineArm, reeving);
    }
}
