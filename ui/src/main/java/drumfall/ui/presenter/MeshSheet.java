// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.UnitSystem;
import drumfall.solver.rating.Rating;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.teeth.contact.MeshContact;
import drumfall.solver.teeth.flank.ToothLimitException;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Train;
import drumfall.ui.presenter.MeshSetting.Dial;
import drumfall.ui.presenter.MeshSetting.Travel;
import drumfall.ui.presenter.TracedMesh.Jam;
import drumfall.ui.work.LatestDesk;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The sheet of one mesh: the teeth in contact at a setting of errors and friction, turned by the maker.
 *
 * <p>Used from the event thread. Choosing and tracing teeth is done off it, the last traced state staying until the next one
 * is there; friction only turns the forces, at once.
 */
public final class MeshSheet {
    /** How long a pitch takes while the mesh turns by itself, s. */
    private static final double SECONDS_A_PITCH = 5;

    private static final double MILLIMETRES = 1e-3;

    private final Workspace workspace;
    private final LatestDesk desk;
    private final List<Consumer<Change>> listeners = new ArrayList<>();
    private Optional<Question> asked = Optional.empty();
    private Optional<MeshSetting> moved = Optional.empty();
    private MeshState state = new MeshState.NoTrain();
    private double turn;
    private boolean turning;

    /** What changed. */
    public enum Change {
        /** Mesh, setting, or what there is to see. */
        STATE,
        /** The phase alone. */
        PHASE,
        /** Whether the mesh turns by itself. */
        TURNING
    }

    /** What tracing answers; friction is no part of it. */
    private record Question(Brief brief, Mesh mesh, double centreError, double thinning, UnitSystem units) {
        boolean sameMesh(Question other) {
            return brief.equals(other.brief) && mesh.equals(other.mesh);
        }
    }

    /**
     * A sheet.
     *
     * @param workspace the shared state
     * @param desk traces
     */
    public MeshSheet(Workspace workspace, LatestDesk desk) {
        this.workspace = workspace;
        this.desk = desk;
        workspace.listen(this::changed);
        follow();
    }

    /**
     * Adds whoever is to be told what changed.
     *
     * @param listener is told after the change
     */
    public void listen(Consumer<Change> listener) {
        listeners.add(listener);
    }

    private void tell(Change change) {
        List.copyOf(listeners).forEach(listener -> listener.accept(change));
    }

    private void changed(Aspect aspect) {
        switch (aspect) {
            case CHOICE, HIGHLIGHT, BRIEF, UNITS -> follow();
            default -> {}
        }
    }

    private void follow() {
        Optional<Question> next = mesh().map(mesh -> question(mesh, setting().orElseThrow()));
        if (next.equals(asked)) {
            return;
        }
        Optional<Question> before = asked;
        asked = next;
        if (next.isEmpty()) {
            desk.drop();
            show(new MeshState.NoTrain());
            return;
        }
        if (before.filter(next.get()::sameMesh).isEmpty()) {
            show(new MeshState.Tracing(next.get().mesh()));
        } else {
            tell(Change.STATE);
        }
        Question question = next.get();
        desk.ask(
                () -> answer(question),
                this::show,
                fault -> show(new MeshState.Nothing(question.mesh(), Texts.of("mesh.broken"), true)));
    }

    private Question question(Mesh mesh, MeshSetting setting) {
        return new Question(workspace.brief(), mesh, setting.centreError(), setting.thinning(), workspace.units());
    }

    private void show(MeshState next) {
        state = next.traced().<MeshState>map(traced -> rubbed(traced.mesh())).orElse(next);
        tell(Change.STATE);
    }

    /** Off the event thread; friction comes after. */
    private static MeshState answer(Question question) {
        Mesh mesh = question.mesh();
        Optional<MeshTeeth> teeth = new TrainRater(question.brief()).movement().teeth(mesh);
        if (teeth.isEmpty()) {
            return new MeshState.Nothing(
                    mesh,
                    Texts.of("mesh.toothless", mesh.counts(), mesh.module()) + " " + Texts.of("mesh.toothless.next"),
                    false);
        }
        MeshSetting setting = new MeshSetting(question.centreError(), question.thinning(), 0);
        try {
            TracedMesh traced = TracedMesh.of(mesh, teeth.get(), setting);
            return new MeshState.Traced(traced, new MeshPhases(traced.path().withFriction(0)), Optional.empty());
        } catch (ToothLimitException apart) {
            String key = apart.subject().startsWith("centreError") ? "mesh.apart" : "mesh.thin";
            String nearest = ShownFigure.of(Dimension.LENGTH, nearest(apart, mesh), question.units())
                    .text();
            return new MeshState.Nothing(mesh, Texts.of(key, nearest), true);
        }
    }

    /** Centre errors are refused in modules, thinning in millimetres of a module of one. */
    private static double nearest(ToothLimitException refused, Mesh mesh) {
        return refused.nearest() * mesh.module().metres();
    }

    private MeshState.Traced rubbed(TracedMesh mesh) {
        double friction = setting().map(MeshSetting::friction).orElse(0.0);
        MeshContact contact = mesh.path().withFriction(friction);
        Optional<String> jammed = mesh.jam().map(jam -> jammed(jam, mesh.overlap()));
        return new MeshState.Traced(mesh, new MeshPhases(contact), jammed.or(() -> binding(contact)));
    }

    private Optional<String> binding(MeshContact contact) {
        return Optional.of(contact)
                .filter(MeshContact::binds)
                .map(bound -> ShownFigure.of(Dimension.NUMBER, bound.path().bindingFriction(), workspace.units()))
                .map(binds -> Texts.of("mesh.binds", binds.text()));
    }

    private String jammed(Jam jam, double overlap) {
        return Texts.of(
                "mesh.jam." + jam.name(),
                ShownFigure.of(Dimension.LENGTH, overlap * MILLIMETRES, workspace.units())
                        .text());
    }

    /** What there is to see. */
    public MeshState state() {
        return state;
    }

    /** Which units are shown. */
    public UnitSystem units() {
        return workspace.units();
    }

    private Optional<Train> train() {
        return workspace.chosen().map(Rating::train);
    }

    /** The meshes of the chosen train from the drum. */
    public List<MeshPlace> places() {
        return train().map(Attention::places).orElse(List.of());
    }

    /** Number of the mesh looked into, 0 for the one at the drum. */
    public Optional<Integer> index() {
        return workspace.highlight().mesh();
    }

    /** The mesh looked into. */
    public Optional<Mesh> mesh() {
        return index().map(this::mesh);
    }

    /** A mesh of the chosen train by its number from the drum, from 0. */
    public Mesh mesh(int index) {
        return train().orElseThrow().meshes().get(index);
    }

    /** Whether the wheel turns clockwise, seen from the dial. */
    public boolean clockwise() {
        return index().map(index -> train().orElseThrow().going().clockwise(index))
                .orElse(true);
    }

    /**
     * Looks into another mesh.
     *
     * @param index its number, 0 for the one at the drum
     */
    public void lookInto(int index) {
        workspace.lookInto(places().get(index));
    }

    /** What the dials stand at; the middle of the brief's bands until the maker moves them. */
    public Optional<MeshSetting> setting() {
        return mesh().map(mesh -> moved.orElseGet(() -> MeshSetting.middle(workspace.brief(), mesh)));
    }

    /** How far a dial goes. */
    public Optional<Travel> travel(Dial dial) {
        return mesh().map(mesh -> MeshSetting.travel(dial, workspace.brief(), mesh));
    }

    /** Whether a dial was moved. */
    public boolean isMoved() {
        return moved.isPresent();
    }

    /**
     * Moves a dial.
     *
     * @param dial which
     * @param value to where, SI; held within its travel
     */
    public void set(Dial dial, double value) {
        travel(dial).ifPresent(travel -> {
            double held = Math.max(travel.least(), Math.min(travel.most(), value));
            moved = setting().map(setting -> setting.with(dial, held));
            settingChanged(dial);
        });
    }

    /** Puts every dial back to the middle of the brief's band. */
    public void reset() {
        moved = Optional.empty();
        follow();
        show(state);
    }

    private void settingChanged(Dial dial) {
        if (dial == Dial.FRICTION) {
            show(state);
        } else {
            follow();
        }
    }

    /** How far the wheel is turned, in pitches since a tooth took up the load. */
    public double turn() {
        return turn;
    }

    /** The phase that is seen, if the mesh is traced. */
    public Optional<MeshPhases.Phase> phase() {
        return state.traced().map(traced -> traced.phases().at(turn));
    }

    /**
     * Turns the wheel on.
     *
     * @param pitches by how many pitches; negative turns it back
     */
    public void turnBy(double pitches) {
        turnTo(turn + pitches);
    }

    /**
     * Turns the wheel to a place.
     *
     * @param pitches pitches since a tooth took up the load
     */
    public void turnTo(double pitches) {
        double within = pitches - Math.floor(pitches);
        if (within != turn) {
            turn = within;
            tell(Change.PHASE);
        }
    }

    /** Whether the mesh turns by itself. */
    public boolean turning() {
        return turning;
    }

    /**
     * Sets the mesh turning, or stops it.
     *
     * @param on whether it is to turn
     */
    public void setTurning(boolean on) {
        if (on != turning) {
            turning = on;
            tell(Change.TURNING);
        }
    }

    /**
     * Lets time pass; the wheel goes on if it was set turning.
     *
     * @param seconds how much
     */
    public void pass(double seconds) {
        if (turning) {
            turnBy(seconds / SECONDS_A_PITCH);
        }
    }
}
