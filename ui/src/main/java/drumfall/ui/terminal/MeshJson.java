// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.teeth.contact.ContactSample;
import drumfall.solver.teeth.contact.MeshContact;
import drumfall.solver.teeth.form.ToothForm;
import java.util.OptionalDouble;

/** One mesh as JSON, with its whole curve over one pitch. */
final class MeshJson {
    private final MeshFigures mesh;

    private MeshJson(MeshFigures mesh) {
        this.mesh = mesh;
    }

    static ObjectNode of(MeshFigures mesh) {
        return new MeshJson(mesh).document();
    }

    private ObjectNode document() {
        ObjectNode document = JsonOutput.document("drumfall-mesh");
        document.put("form", JsonOutput.word(mesh.wish().family()));
        document.put("module_m", mesh.wish().module().metres());
        put(document, "pressureAngle_rad", mesh.pressureAngle());
        document.put("centreDistance_m", mesh.centreDistance());
        gear(document.putObject("wheel"), mesh.wheel());
        gear(document.putObject("pinion"), mesh.pinion());
        document.put("contactRatio", mesh.drawn().contactRatio());
        document.put("approachShare", mesh.approachShare());
        document.put("recessShare", 1 - mesh.approachShare());
        JsonOutput.put(document, "bindingFriction", mesh.band().bindingFriction());
        JsonOutput.put(document, "bindingFrictionDrawn", mesh.drawn().bindingFriction());
        JsonOutput.put(
                document,
                "bindingReserve",
                mesh.band().bindingFriction() - mesh.wish().friction().high().si());
        document.put("backlash_m", mesh.drawnBacklash());
        document.put("leastBacklash_m", mesh.leastBacklash());
        document.put("greatestBacklash_m", mesh.greatestBacklash());
        document.put("printableSection_m", mesh.printableSection());
        document.put("thinnestSection_m", mesh.thinnestSection());
        ArrayNode frictions = document.putArray("frictions");
        for (double friction : mesh.frictions()) {
            passed(frictions.addObject(), friction);
        }
        return document;
    }

    private void gear(ObjectNode group, ToothForm form) {
        group.put("count", form.toothCount());
        put(group, "shift", MeshFigures.shift(form));
        group.put("addendum_m", mesh.addendum(form));
        group.put("pitchDiameter_m", 2 * mesh.metres(form.pitchRadius()));
        group.put("tipDiameter_m", 2 * mesh.tipRadius(form));
        put(group, "rootDiameter_m", twice(mesh.rootRadius(form)));
        put(group, "baseDiameter_m", twice(mesh.baseRadius(form)));
        group.put("thickness_m", mesh.thickness(form));
        JsonOutput.put(group, "formFactor", mesh.formFactor(form));
    }

    private static OptionalDouble twice(OptionalDouble value) {
        return value.isPresent() ? OptionalDouble.of(2 * value.getAsDouble()) : value;
    }

    private static void put(ObjectNode group, String field, OptionalDouble figure) {
        JsonOutput.put(group, field, figure.orElse(Double.NaN));
    }

    private void passed(ObjectNode group, double friction) {
        MeshContact contact = mesh.at(friction);
        group.put("friction", friction);
        group.put("meanEfficiency", contact.mean());
        group.put("worstEfficiency", contact.worst());
        group.put("worstAngle_rad", contact.worstAngle());
        group.put("worstTorqueShareOverBand", mesh.worstOverBand(friction));
        ArrayNode curve = group.putArray("curve");
        contact.samples().forEach(sample -> sample(curve.addObject(), sample));
    }

    private void sample(ObjectNode group, ContactSample sample) {
        var leading = sample.contacts().get(0);
        group.put("wheelAngle_rad", sample.driverAngle());
        group.put("ratio", sample.speedRatio());
        group.put("torqueShare", sample.torqueRatio() * mesh.teeth().pair().ratio());
        group.put("efficiency", sample.efficiency());
        group.put("wheelContactRadius_m", mesh.metres(leading.driverRadius()));
        group.put("pinionContactRadius_m", mesh.metres(leading.followerRadius()));
        group.put("pairs", sample.contacts().size());
        group.put("side", leading.isApproach() ? "approach" : "recess");
    }
}
