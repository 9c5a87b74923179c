// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.teeth.contact.ContactPath;
import drumfall.solver.teeth.contact.MeshConditions;
import drumfall.solver.teeth.contact.MeshContact;
import drumfall.solver.teeth.contact.MeshTracer;
import drumfall.solver.teeth.contact.Sampling;
import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.train.Mesh;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The cards of one mesh under errors and friction as they are set; to reckon one, the contact is traced anew. */
public final class WhereFromMesh {
    private static final String TRACED = "contact of the drawn flanks, traced through one pitch; ";

    private final CardShelf shelf = new CardShelf();
    private final MeshTeeth teeth;
    private final Sampling sampling;

    private WhereFromMesh(MeshTeeth teeth, Sampling sampling) {
        this.teeth = teeth;
        this.sampling = sampling;
    }

    /**
     * What is set.
     *
     * @param centreError real less nominal centre distance, m
     * @param thinning taken off each tooth along its pitch circle, both flanks together, m; pins are not thinned
     * @param friction at the teeth, 0 to 1
     */
    public record Errors(double centreError, double thinning, double friction) {}

    /**
     * The cards of a mesh.
     *
     * @param mesh counts and module
     * @param teeth its teeth
     * @param errors what is set
     * @param sampling how finely the contact is traced
     * @throws IllegalArgumentException if the teeth do not reach each other, or thinning leaves none
     */
    public static WhereFromMesh of(Mesh mesh, MeshTeeth teeth, Errors errors, Sampling sampling) {
        WhereFromMesh cards = new WhereFromMesh(teeth, sampling);
        cards.make(mesh, errors);
        return cards;
    }

    /**
     * The contact under errors.
     *
     * @param teeth the teeth
     * @param centreError m
     * @param thinning m
     * @param module m
     * @param sampling how finely it is traced
     * @throws IllegalArgumentException if the teeth do not reach each other, or thinning leaves none
     */
    public static ContactPath trace(
            MeshTeeth teeth, double centreError, double thinning, double module, Sampling sampling) {
        double thinned = thinning / module;
        boolean pins = teeth.pair().follower() instanceof LanternPinion;
        MeshConditions conditions = new MeshConditions(centreError / module, thinned, pins ? 0 : thinned);
        return MeshTracer.trace(teeth.pair(), conditions, sampling);
    }

    private ContactPath path(double centreError, double thinning, double module) {
        return trace(teeth, centreError, thinning, module, sampling);
    }

    private void make(Mesh mesh, Errors errors) {
        Card friction = shelf.set("tooth-friction-set", "µ", errors.friction(), "1", "/friction/teeth/low");
        Card error = shelf.set("centre-error-set", "Δa", errors.centreError(), "m", "/teeth/centreError");
        Card thinning = shelf.set("thinning-set", "j", errors.thinning(), "m", "/teeth/thinning/low");
        Card module = shelf.train("module", "m", mesh.module().metres(), "m");
        ContactPath path =
                path(errors.centreError(), errors.thinning(), mesh.module().metres());
        MeshContact contact = path.withFriction(errors.friction());
        double ratio = teeth.pair().ratio();
        shelf.figure(
                "mesh-worst-torque",
                "M_p/M_w",
                contact.worstTorque(),
                "1",
                "least of (M_p / M_w) · z/p over the pitch; both arms of the force, the normal turned by arctan µ against"
                        + " the sliding",
                in -> path(in[1], in[2], in[3]).withFriction(in[0]).worstTorque() / ratio * in[4] / in[5],
                TRACED + "the wheel drives",
                friction,
                error,
                thinning,
                module,
                shelf.train("wheel", "z", mesh.toothCount(), "1"),
                shelf.train("pinion", "p", mesh.leafCount(), "1"));
        shelf.figure(
                "mesh-mean",
                "η",
                contact.mean(),
                "1",
                "η = (1/Δθ) ∫ (M_p / M_w) (dθ_p / dθ_w) dθ_w over one pitch",
                in -> path(in[1], in[2], in[3]).withFriction(in[0]).mean(),
                TRACED + "the work mean",
                friction,
                error,
                thinning,
                module);
        Card binding = shelf.figure(
                "binding-friction",
                "µ_b",
                path.bindingFriction(),
                "1",
                "friction at which the force passes through the pinion's centre at some phase",
                in -> path(in[0], in[1], in[2]).bindingFriction(),
                TRACED + "the least over all phases",
                error,
                thinning,
                module);
        shelf.figure(
                "binding-reserve",
                "µ_b − µ",
                contact.bindingReserve(),
                "1",
                "µ_b − µ",
                in -> in[0] - in[1],
                CardShelf.OUR_OWN,
                binding,
                friction);
        shelf.figure(
                "backlash",
                "j_t",
                path.clearances().leastBacklash() * mesh.module().metres(),
                "m",
                "least turn of the pinion between its two flanks times its pitch radius",
                in -> path(in[0], in[1], in[2]).clearances().leastBacklash() * in[2],
                "contact of the trailing flanks, traced as the leading ones mirrored",
                error,
                thinning,
                module);
    }

    /**
     * A card by its name.
     *
     * @param name for example {@code mesh-mean}; others give an empty answer
     */
    public Optional<Card> card(String name) {
        return Optional.ofNullable(shelf.cards().get(name));
    }

    /** The cards that have a formula. */
    public List<Card> figures() {
        Map<String, Card> cards = shelf.cards();
        return cards.values().stream()
                .filter(card -> card.formula().isPresent())
                .toList();
    }
}
