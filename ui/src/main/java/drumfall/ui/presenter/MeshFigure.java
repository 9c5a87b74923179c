// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.teeth.contact.MeshContact;
import drumfall.ui.presenter.WhereCard.Input;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Figures of the mesh looked into, each with a card that says where it comes from. */
public enum MeshFigure {
    /** Least torque of the pitch as a share of that without friction. */
    WORST,
    /** Work given out over a pitch for work put in. */
    MEAN,
    /** Binding friction less the friction set. */
    RESERVE,
    /** Least play along the pitch circle. */
    BACKLASH;

    private static final double PERCENT = 100;

    /** What it is called. */
    public String title() {
        return Texts.of("meshfigure." + name());
    }

    /**
     * Its value.
     *
     * @param traced the mesh
     * @param units which units are read
     */
    public ShownFigure value(MeshState.Traced traced, UnitSystem units) {
        MeshContact contact = traced.contact();
        return switch (this) {
            case WORST -> percent(contact.worstTorque());
            case MEAN -> percent(contact.mean());
            case RESERVE ->
                Double.isFinite(contact.bindingReserve())
                        ? ShownFigure.of(Dimension.NUMBER, contact.bindingReserve(), units)
                                .withMinusSign()
                        : new ShownFigure(Texts.of("mesh.never"), "");
            case BACKLASH ->
                ShownFigure.of(Dimension.LENGTH, traced.mesh().backlash(), units)
                        .withMinusSign();
        };
    }

    /** A share in percent with one decimal. */
    public static ShownFigure percent(double share) {
        return new ShownFigure(String.format(Locale.ROOT, "%.1f", PERCENT * share), "%").withMinusSign();
    }

    /**
     * Where it comes from.
     *
     * @param traced the mesh
     * @param setting what the dials stand at
     * @param units which units are read
     */
    public WhereCard card(MeshState.Traced traced, MeshSetting setting, UnitSystem units) {
        return new WhereCard(
                title(),
                value(traced, units),
                Texts.of("meshformula." + name()),
                List.of(
                        input("z, p", "counts", traced.mesh().mesh().counts().toString(), Optional.empty()),
                        input("µ", "friction", number(setting.friction(), units), Optional.of("/friction/teeth/low")),
                        input("Δa", "error", length(setting.centreError(), units), Optional.of("/teeth/centreError")),
                        input("j", "thinning", length(setting.thinning(), units), Optional.of("/teeth/thinning/low")),
                        input(
                                "µ_b",
                                "binding",
                                number(traced.contact().path().bindingFriction(), units),
                                Optional.empty())),
                Texts.of("meshsource." + name()));
    }

    private static String number(double value, UnitSystem units) {
        return ShownFigure.of(Dimension.NUMBER, value, units).text();
    }

    private static String length(double metres, UnitSystem units) {
        return ShownFigure.of(Dimension.LENGTH, metres, units).withMinusSign().text();
    }

    private static Input input(String symbol, String key, String value, Optional<String> pointer) {
        return new Input(symbol, Texts.of("meshinput." + key), value, pointer);
    }
}
