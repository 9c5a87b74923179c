// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rating.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.rating.why.WhereFromMesh.Errors;
import drumfall.solver.samples.DemoTrain;
import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.teeth.contact.MeshContact;
import drumfall.solver.teeth.contact.Sampling;
import drumfall.solver.train.Mesh;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WhereFromMeshTest {
    // 1e-12 of the value: the same tracing twice, and a ratio taken out and put in again.
    private static final double SHARE = 1e-12;

    private static final Mesh MESH = DemoTrain.train().meshes().get(1);
    private static final MeshTeeth TEETH =
            new TrainRater(BundledBriefs.demo()).movement().teeth(MESH).orElseThrow();

    private static WhereFromMesh cards(double error, double thinning, double friction) {
        return WhereFromMesh.of(MESH, TEETH, new Errors(error, thinning, friction), Sampling.SWIFT);
    }

    @ParameterizedTest
    @CsvSource({"0, 0.0001, 0.2", "0.0001, 0.0001, 0", "-0.0001, 0.0002, 0.35"})
    void every_card_reckons_its_figure_from_its_inputs_and_from_the_ends(
            double error, double thinning, double friction) {
        WhereFromMesh cards = cards(error, thinning, friction);
        MeshContact contact = WhereFromMesh.trace(
                        TEETH, error, thinning, MESH.module().metres(), Sampling.SWIFT)
                .withFriction(friction);

        assertThat(cards.card("mesh-worst-torque").orElseThrow().value()).isEqualTo(contact.worstTorque());
        assertThat(cards.card("mesh-mean").orElseThrow().value()).isEqualTo(contact.mean());
        assertThat(cards.figures()).hasSize(5).allSatisfy(card -> {
            assertThat(card.reckoned()).as(card.name()).isCloseTo(card.value(), offset(Math.abs(card.value()) * SHARE));
            assertThat(card.reckonedFromTheEnds())
                    .as(card.name())
                    .isCloseTo(card.value(), offset(Math.abs(card.value()) * SHARE));
        });
    }

    /** A card whose inputs do not move its figure would be decoration: each is moved by one part in a hundred. */
    @ParameterizedTest
    @ValueSource(strings = {"mesh-worst-torque", "mesh-mean", "binding-friction", "binding-reserve", "backlash"})
    void every_input_of_a_card_moves_its_figure(String name) {
        Card card = cards(0.0001, 0.0001, 0.2).card(name).orElseThrow();
        double[] inputs = card.inputs().stream().mapToDouble(Card::value).toArray();
        for (int i = 0; i < inputs.length; i++) {
            double[] moved = inputs.clone();
            moved[i] *= 1.01;
            assertThat(card.formula().orElseThrow().function().of(moved))
                    .as("%s by %s", name, card.inputs().get(i).name())
                    .isNotEqualTo(card.reckoned());
        }
    }
}
