// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout;

import drumfall.solver.layout.size.ArborSize;
import drumfall.solver.layout.size.DialPlace;
import drumfall.solver.layout.size.DrumSize;
import drumfall.solver.layout.size.Envelope;
import drumfall.solver.layout.size.EscapeSize;
import drumfall.solver.layout.size.Face;
import drumfall.solver.layout.size.Gaps;
import drumfall.solver.layout.size.HangingLine;
import drumfall.solver.layout.size.MeshSpacing;
import drumfall.solver.layout.size.MotionSize;
import drumfall.solver.layout.size.MovementParts;
import drumfall.solver.layout.size.Pillars;
import drumfall.solver.layout.size.Side;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Movements of plausible sizes for tests and benchmarks; the counts are our own, printed sizes common practice. */
public final class Movements {
    private static final long MICROMETRE = 1_000;
    private static final long MM = 1_000_000;
    private static final Gaps GAPS = new Gaps(MM, MM, MM / 2);

    private Movements() {}

    /** A mesh from its counts and its module in micrometres: addendum of one module, a plane of 5 mm beside one of 7. */
    public static MeshSpacing mesh(int toothCount, int leafCount, long module) {
        long unit = module * MICROMETRE / 2;
        return new MeshSpacing(
                unit * (toothCount + leafCount), unit * (toothCount + 2), unit * (leafCount + 2), 5 * MM, 7 * MM);
    }

    /** The usual eight-day order of four meshes with module 1.25 to 1 mm; the centre arbor is the second after the drum. */
    public static MovementParts eightDay() {
        return parts(2, List.of(mesh(72, 10, 1500), mesh(60, 10, 1250), mesh(64, 10, 1000), mesh(60, 8, 1000)), true);
    }

    /** A movement of some meshes with an ordinary drum, escapement and, if asked, motion work. */
    public static MovementParts parts(int centre, List<MeshSpacing> meshes, boolean motion) {
        ArborSize arbor = new ArborSize(3 * MM / 2, 3 * MM, false);
        return new MovementParts(
                centre,
                Collections.nCopies(meshes.size() + 1, arbor),
                meshes,
                new DrumSize(30 * MM, 35 * MM, 3 * MM, Face.FRONT),
                new EscapeSize(25 * MM, 6 * MM, 35 * MM, EscapeSize.ABOVE, 24 * MM, 3 * MM / 2),
                motion ? Optional.of(motionWork()) : Optional.empty());
    }

    private static MotionSize motionWork() {
        return new MotionSize(24 * MM, 9 * MM, 19 * MM, 7 * MM, 20 * MM, 2 * MM, 5 * MM, 5 * MM);
    }

    /** A need with a line of one fall, no locks, no wishes. */
    public static LayoutNeed need(MovementParts parts, Envelope envelope, int steps) {
        Side side = Side.ofLine(parts.centreArbor());
        return new LayoutNeed(
                parts,
                new HangingLine(2 * MM, 26 * MM, side, 0, 50 * MM, 120 * MM),
                GAPS,
                envelope,
                Locks.NONE,
                Preference.ANY,
                new AngleGrid(steps));
    }

    /** A frame without pillars, the dial centre anywhere. */
    public static Envelope frame(long widthMm, long heightMm, long depthMm) {
        return new Envelope(widthMm * MM, heightMm * MM, depthMm * MM, 4 * MM, Optional.empty(), DialPlace.ANYWHERE);
    }

    /** A frame with pillars in its corners, the dial centre on its middle vertical. */
    public static Envelope pillaredFrame(long widthMm, long heightMm, long depthMm) {
        return new Envelope(
                widthMm * MM,
                heightMm * MM,
                depthMm * MM,
                4 * MM,
                Optional.of(new Pillars(6 * MM, 8 * MM, 8 * MM)),
                DialPlace.onVertical(widthMm * MM / 2));
    }

    /** A small movement drawn at random: two or three meshes, a coarse grid, a frame that may be too small. */
    public static LayoutNeed drawn(long seed) {
        return new Draw(new Random(seed)).need();
    }

    private record Draw(Random random) {
        private LayoutNeed need() {
            int meshCount = random.nextInt(3) == 0 ? 3 : 2;
            List<MeshSpacing> meshes = new ArrayList<>();
            for (int mesh = 0; mesh < meshCount; mesh++) {
                meshes.add(drawnMesh(mesh));
            }
            MovementParts parts = parts(meshes);
            int steps = meshCount == 3 ? 4 : parts.motion().isPresent() ? 8 : 16;
            return new LayoutNeed(parts, line(), gaps(), frame(), Locks.NONE, preference(), new AngleGrid(steps));
        }

        /** A whole number of micrometres, so that tables of arbors do not fall on the same lengths. */
        private long between(int leastMm, int mostMm) {
            return (leastMm * 1_000L + random.nextInt((mostMm - leastMm) * 1_000 + 1)) * MICROMETRE;
        }

        private MovementParts parts(List<MeshSpacing> meshes) {
            List<ArborSize> arbors = new ArrayList<>();
            for (int arbor = 0; arbor <= meshes.size(); arbor++) {
                arbors.add(new ArborSize(between(1, 3), between(1, 8), random.nextBoolean()));
            }
            return new MovementParts(
                    random.nextInt(meshes.size() + 1),
                    arbors,
                    meshes,
                    new DrumSize(
                            between(8, 30),
                            between(5, 30),
                            between(0, 3),
                            random.nextBoolean() ? Face.FRONT : Face.REAR),
                    new EscapeSize(
                            between(8, 20), between(3, 6), between(28, 40), Math.PI / 2, between(6, 24), between(1, 2)),
                    random.nextBoolean() ? Optional.of(motionWork()) : Optional.empty());
        }

        /** Tips reach 2 mm into each other; wheels grow lighter from the drum on. */
        private MeshSpacing drawnMesh(int mesh) {
            long wheel = between(26 - 4 * mesh, 38 - 4 * mesh);
            long pinion = between(5, 12);
            return new MeshSpacing(wheel + pinion - 2 * MM, wheel, pinion, between(3, 6), between(4, 9));
        }

        private HangingLine line() {
            long back = random.nextInt(3) == 0 ? between(10, 20) : 0;
            return new HangingLine(
                    between(1, 2),
                    between(5, 28),
                    random.nextBoolean() ? Side.LEFT : Side.RIGHT,
                    back,
                    between(10, 60),
                    between(30, 120));
        }

        private Gaps gaps() {
            return new Gaps(between(0, 2), between(0, 2), between(0, 1));
        }

        private Envelope frame() {
            long width = between(70, 160);
            long height = between(90, 220);
            return new Envelope(width, height, between(35, 110), between(3, 5), pillars(), dial(width, height));
        }

        private Optional<Pillars> pillars() {
            return random.nextInt(3) == 0
                    ? Optional.of(new Pillars(between(3, 6), between(7, 12), between(7, 12)))
                    : Optional.empty();
        }

        private DialPlace dial(long width, long height) {
            return switch (random.nextInt(4)) {
                case 0 -> DialPlace.onVertical(width / 2);
                case 1 -> DialPlace.share(width, height, 0.5, 0.5 + random.nextDouble() / 4);
                default -> DialPlace.ANYWHERE;
            };
        }

        private Preference preference() {
            List<Wish> wishes = new ArrayList<>(List.of(Wish.values()));
            Collections.shuffle(wishes, random);
            List<Wish> lengths =
                    wishes.stream().filter(wish -> wish != Wish.SMALL_PLATE).toList();
            return switch (random.nextInt(4)) {
                case 0 -> Preference.ANY;
                case 1 -> Preference.inOrder(wishes.get(0));
                case 2 -> Preference.inOrder(wishes.get(0), wishes.get(1));
                default ->
                    Preference.summed(
                            new Preference.WeightedWish(lengths.get(0), 1 + random.nextInt(5)),
                            new Preference.WeightedWish(lengths.get(1), 1 + random.nextInt(5)));
            };
        }
    }
}
