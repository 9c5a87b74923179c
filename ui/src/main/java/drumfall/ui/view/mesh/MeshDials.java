// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.mesh;

import drumfall.solver.quantity.Dimension;
import drumfall.ui.presenter.MeshSetting.Dial;
import drumfall.ui.presenter.MeshSetting.Travel;
import drumfall.ui.presenter.MeshSheet;
import drumfall.ui.presenter.ShownFigure;
import drumfall.ui.presenter.Texts;
import drumfall.ui.view.look.BandSlider;
import drumfall.ui.view.look.FigureLabel;
import drumfall.ui.view.look.Parts;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The dials of centre error, thinning and friction, each with its value and the brief's band. */
final class MeshDials extends JPanel {
    private final transient MeshSheet sheet;
    private final Map<Dial, BandSlider> sliders = new EnumMap<>(Dial.class);
    private final Map<Dial, FigureLabel> values = new EnumMap<>(Dial.class);
    private final JButton back;

    MeshDials(MeshSheet sheet) {
        super(new MigLayout("insets 0 6lp 0 0, gap 4lp 1lp, wrap 2", "[][grow,fill]", ""));
        this.sheet = sheet;
        setOpaque(false);
        for (Dial dial : Dial.values()) {
            add(dial);
        }
        back = Parts.link(Texts.of("mesh.back"), sheet::reset);
        back.setName("mesh.back");
        back.setToolTipText(Texts.of("mesh.back.tip"));
        add(back, "span 2, al left, growx 0");
    }

    private void add(Dial dial) {
        String name = Texts.of("mesh.dial." + dial.name());
        BandSlider slider = new BandSlider(value -> sheet.set(dial, value));
        slider.setName("mesh.dial." + dial.name().toLowerCase(Locale.ROOT));
        slider.setToolTipText(Texts.of("mesh.dial.tip"));
        Parts.named(slider, name);
        FigureLabel value = new FigureLabel(true);
        sliders.put(dial, slider);
        values.put(dial, value);
        add(Parts.remark(name));
        add(value, "growx, wmin 0");
        add(slider, "span 2, growx, w 10:10:, gapbottom 3lp");
    }

    /** Shows what the dials stand at. */
    void refresh() {
        for (Dial dial : Dial.values()) {
            Optional<Travel> travel = sheet.travel(dial);
            double value = sheet.setting().map(setting -> setting.at(dial)).orElse(Double.NaN);
            sliders.get(dial).show(travel, value);
            Dimension dimension = dial == Dial.FRICTION ? Dimension.NUMBER : Dimension.LENGTH;
            values.get(dial).setFigure(shown(dimension, value));
        }
        back.setEnabled(sheet.isMoved());
    }

    /** Steps of a slider are no round numbers; ten nanometres are beyond any printer. */
    private ShownFigure shown(Dimension dimension, double value) {
        return ShownFigure.of(dimension, Math.rint(value * 1e8) / 1e8, sheet.units())
                .withMinusSign();
    }
}
