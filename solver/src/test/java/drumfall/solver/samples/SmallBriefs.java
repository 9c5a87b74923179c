// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.samples;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefReader;
import drumfall.solver.brief.BriefWriter;
import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.brief.Locks;
import drumfall.solver.brief.MeshLock;
import drumfall.solver.brief.MeshPlace;
import drumfall.solver.quantity.Quantity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * Seeded small briefs: few counts, wide or narrow demands around a random train, any objectives, sometimes locks.
 *
 * <p>More than one in three has two modules to choose from at each of three meshes and so more than ten thousand trains, for
 * which plain loops take nine tenths of their time. Where every train is rated, the ordinary run takes such a brief with one
 * count of leaves instead of two, which leaves an eighth of the trains; the thorough run takes it as it is.
 */
public final class SmallBriefs {
    private static final boolean FULL = "full".equals(System.getProperty("drumfall.samples"));
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int MANY = 10_000;

    private final Random random;
    private final Random material;
    private final Random plates;
    private int wheelFrom;
    private int leavesFrom;
    private int modules;
    private int below;
    private int escapeFrom;

    private SmallBriefs(long seed) {
        this.random = new Random(seed);
        this.material = new Random(-1 - seed);
        this.plates = new Random(seed ^ 0x686f6c6573L);
    }

    /** The brief of a seed; seeds whose random brief contradicts itself give an empty answer. */
    public static Optional<Brief> of(long seed) {
        return new SmallBriefs(seed).brief();
    }

    /** So many briefs from consecutive seeds. */
    public static List<Brief> some(int count, long firstSeed) {
        return each(firstSeed).limit(count).toList();
    }

    /** So many briefs from consecutive seeds; in the ordinary run those of many trains with fewer of them. */
    public static List<Brief> fewer(int count, long firstSeed) {
        return fewer(firstSeed).limit(count).toList();
    }

    /** Briefs from consecutive seeds without end; in the ordinary run those of many trains with fewer of them. */
    public static Stream<Brief> fewer(long firstSeed) {
        return each(firstSeed).map(SmallBriefs::fewer);
    }

    /** A brief of many trains with one count of leaves; in the thorough run, and if its trains are few, as it is. */
    public static Brief fewer(Brief brief) {
        int leaves = brief.teeth().leaves().from();
        return FULL || trains(brief) < MANY
                ? brief
                : Briefs.with(brief, "/teeth/leaves = {\"from\": %d, \"to\": %d}".formatted(leaves, leaves));
    }

    /** So many of the briefs of many trains, as they are, from consecutive seeds. */
    public static List<Brief> large(int count, long firstSeed) {
        return each(firstSeed)
                .filter(brief -> trains(brief) >= MANY)
                .limit(count)
                .toList();
    }

    private static Stream<Brief> each(long firstSeed) {
        return LongStream.iterate(firstSeed, seed -> seed + 1)
                .mapToObj(SmallBriefs::of)
                .flatMap(Optional::stream);
    }

    /** Of how many trains a brief leaves the choice, locks aside. */
    private static long trains(Brief brief) {
        int wheels =
                brief.teeth().wheelTeeth().to() - brief.teeth().wheelTeeth().from() + 1;
        int pinions = brief.teeth().leaves().to() - brief.teeth().leaves().from() + 1;
        long each = (long) wheels * pinions * brief.teeth().modules().size();
        long trains = 0;
        for (int above = brief.train().above().from();
                above <= brief.train().above().to();
                above++) {
            for (int below = brief.train().below().from();
                    below <= brief.train().below().to();
                    below++) {
                trains += Math.round(Math.pow((double) each, above + below));
            }
        }
        // Two drums, two escape wheels.
        return trains * brief.line().falls().size() * 4;
    }

    private Optional<Brief> brief() {
        ObjectNode tree = BriefWriter.tree(BundledBriefs.demo());
        choices(tree);
        demands(tree);
        objectives(tree);
        return BriefReader.read(tree).accepted().map(this::withLocks).map(this::withHoles);
    }

    private void choices(ObjectNode tree) {
        wheelFrom = 36 + random.nextInt(30);
        leavesFrom = 7 + random.nextInt(4);
        modules = 1 + random.nextInt(2);
        below = 1 + random.nextInt(2);
        escapeFrom = 15 + random.nextInt(10);
        put(tree, "/teeth/wheelTeeth", "from", wheelFrom);
        put(tree, "/teeth/wheelTeeth", "to", wheelFrom + 2);
        put(tree, "/teeth/leaves", "from", leavesFrom);
        put(tree, "/teeth/leaves", "to", leavesFrom + 1);
        ArrayNode sizes = ((ObjectNode) tree.at("/teeth")).putArray("modules");
        sizes.add("1 mm");
        if (modules == 2) {
            sizes.add("1.25 mm");
        }
        put(tree, "/train/above", "from", 1);
        put(tree, "/train/above", "to", below == 1 && random.nextBoolean() ? 2 : 1);
        put(tree, "/train/below", "from", random.nextBoolean() ? 1 : below);
        put(tree, "/train/below", "to", below);
        put(tree, "/escapement/teeth", "from", escapeFrom);
        put(tree, "/escapement/teeth", "to", escapeFrom + 3);
        put(tree, "/escapement/teeth", "step", 3);
        put(tree, "/drum/diameter", "from", "30 mm");
        put(tree, "/drum/diameter", "to", "36 mm");
        put(tree, "/drum/diameter", "step", "6 mm");
        put(tree, "/drum", "length", "60 mm");
        put(tree, "/frame", "depth", "90 mm");
        // Layouts have oracles of their own.
        put(tree, "/frame", "arrangement", "unplaced");
        put(tree, "/parts", "hubWall", "0 mm");
    }

    /** Demands are set around what a random train of the choices would do. */
    private void demands(ObjectNode tree) {
        double ratio = (wheelFrom + 1) / (leavesFrom + 0.5);
        double beats = 2 * (escapeFrom + 1.5) * Math.pow(ratio, below);
        double half = 1 + random.nextDouble() * 0.3;
        ObjectNode beat = (ObjectNode) tree.at("/beat");
        beat.remove("pendulumLength");
        beat.putObject("beatsPerHour")
                .put("from", Long.toString(Math.max(100, Math.round(beats / half))))
                .put("to", Long.toString(Math.max(101, Math.round(beats * half))));
        double days = ratio * 1.25 / (Math.PI * 0.0345) / 24 * (random.nextBoolean() ? 1 : 2);
        double around = 1.02 + random.nextDouble();
        put(tree, "/run", "atLeast", "%.4f d".formatted(days / around));
        put(tree, "/run", "wanted", "%.4f d".formatted(days));
        put(tree, "/run", "atMost", "%.4f d".formatted(days * around));
        put(tree, "/weight", "limit", "%.3f kg".formatted(8 * Math.exp(random.nextDouble() * 4.1)));
        // One brief in three is printed of something so weak that teeth may decide.
        double strength = material.nextInt(3) == 0 ? 10 * Math.exp(material.nextDouble() * 4) : 1000;
        put(tree, "/material", "allowable", "%.3f MPa".formatted(strength));
        // One in three hangs from a line that may decide between one fall and two.
        double rated = material.nextInt(3) == 0 ? 1500 * Math.exp(material.nextDouble() * 3) : 60_000;
        put(tree, "/line", "ratedLoad", "%.1f N".formatted(rated));
        put(tree, "/frame", "width", (random.nextInt(5) == 0 ? 75 : 200) + " mm");
        put(tree, "/frame", "height", (random.nextInt(5) == 0 ? 100 : 300) + " mm");
    }

    private void objectives(ObjectNode tree) {
        List<String[]> all = new ArrayList<>(List.of(
                new String[] {"recommended-weight", random.nextBoolean() ? "0.3 %" : "20 g"},
                new String[] {"filament-mass", random.nextBoolean() ? "0.5 g" : "2 %"},
                new String[] {"largest-wheel", "0.5 mm"},
                new String[] {"centre-distances", "0.5 mm"},
                new String[] {"meshes", ""},
                new String[] {"modules", ""},
                new String[] {"duration-error", "1 h"}));
        Collections.shuffle(all, random);
        ArrayNode list = tree.putArray("objectives");
        for (String[] objective : all.subList(0, 1 + random.nextInt(4))) {
            ObjectNode entry = list.addObject().put("figure", objective[0]);
            if (!objective[1].isEmpty()) {
                entry.put("resolution", objective[1]);
            }
        }
    }

    private Brief withLocks(Brief brief) {
        if (random.nextInt(3) != 0) {
            return brief;
        }
        ObjectNode tree = BriefWriter.tree(brief.withLocks(Locks.NONE));
        ObjectNode locks = (ObjectNode) tree.get("locks");
        if (random.nextBoolean()) {
            locks.putArray("meshes")
                    .addObject()
                    .put("wheel", wheelFrom + random.nextInt(3))
                    .set("place", JSON.createObjectNode().put("side", "below").put("number", 1));
        }
        if (random.nextBoolean()) {
            locks.put("escapeTeeth", escapeFrom + 3 * random.nextInt(2));
        }
        if (random.nextBoolean()) {
            locks.put("falls", 1 + random.nextInt(2));
        }
        return BriefReader.read(tree).accepted().orElse(brief);
    }

    /** One brief in four has the holes of a mesh drilled, on a distance that some pair makes with the smaller module. */
    private Brief withHoles(Brief brief) {
        if (plates.nextInt(4) != 0) {
            return brief;
        }
        MeshPlace place = new MeshPlace(plates.nextBoolean() ? MeshPlace.Side.ABOVE : MeshPlace.Side.BELOW, 1);
        int counts = wheelFrom + plates.nextInt(3) + leavesFrom + plates.nextInt(2);
        MeshLock lock = brief.locks()
                .at(place)
                .orElse(MeshLock.open(place))
                .withDistance(Optional.of(Quantity.ofMillimetres(counts / 2.0)));
        return brief.withLocks(brief.locks().withMeshes(List.of(lock)));
    }

    private static void put(ObjectNode tree, String pointer, String field, String value) {
        ((ObjectNode) tree.at(pointer)).put(field, value);
    }

    private static void put(ObjectNode tree, String pointer, String field, int value) {
        ((ObjectNode) tree.at(pointer)).put(field, value);
    }
}
