// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import drumfall.solver.brief.MeshPlace.Side;
import java.math.BigInteger;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One thing held fast on the command line.
 *
 * @param name what, for example {@code below-1.wheel} or {@code falls}
 * @param value the entry as the brief's JSON has it
 */
record Hold(String name, JsonNode value) {
    private static final Pattern ENTRY = Pattern.compile("([^=]*)=(.*)");
    private static final Pattern OF_MESH =
            Pattern.compile("(above|below)-([1-9])\\.(wheel|leaves|module|distance|direction)");
    private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]{1,20}");

    /** Whole-train holds and the fields they stand for. */
    private static final Map<String, String> FIELDS = Map.of(
            "meshes-above", "meshesAbove",
            "meshes-below", "meshesBelow",
            "drum", "drumDiameter",
            "falls", "falls",
            "escape-wheel", "escapeTeeth",
            "motion-direction", "motionDirection",
            "motion-distance", "motionDistance",
            "pallet-distance", "palletDistance");

    /** What is held at a quantity with its unit; all else is counted. */
    private static final Pattern MEASURED =
            Pattern.compile("drum|motion-direction|motion-distance|pallet-distance|.*\\.(module|distance|direction)");

    static Hold parse(String text) {
        Matcher entry = ENTRY.matcher(text);
        if (!entry.matches()) {
            throw RefusedInput.of("hold.form", text);
        }
        String name = entry.group(1).strip();
        String value = entry.group(2).strip();
        boolean measured = MEASURED.matcher(name).matches();
        if (!FIELDS.containsKey(name) && !OF_MESH.matcher(name).matches()) {
            throw RefusedInput.of("hold.name", name);
        }
        if (!measured && !WHOLE.matcher(value).matches()) {
            throw RefusedInput.of("hold.whole", name, value);
        }
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        return new Hold(name, measured ? nodes.textNode(value) : nodes.numberNode(new BigInteger(value)));
    }

    /** Puts the hold into the group "locks" of a brief; it takes the place of what is held there. */
    HeldEntry putInto(ObjectNode locks) {
        Matcher mesh = OF_MESH.matcher(name);
        if (!mesh.matches()) {
            locks.set(FIELDS.get(name), value);
            return new HeldEntry("/locks/" + FIELDS.get(name), this);
        }
        Side side = Side.valueOf(mesh.group(1).toUpperCase(Locale.ROOT));
        int index = MeshEntries.indexOf(locks, side, Integer.parseInt(mesh.group(2)));
        ((ObjectNode) locks.withArray("meshes").get(index)).set(mesh.group(3), value);
        return new HeldEntry("/locks/meshes/" + index + "/" + mesh.group(3), this);
    }

    /** The hold without its field: what a problem with the mesh itself speaks of. */
    String place() {
        return name.replaceAll("\\..*", "");
    }

    /** The locks on meshes in a brief's JSON. */
    private static final class MeshEntries {
        static int indexOf(ObjectNode locks, Side side, int number) {
            String word = side.name().toLowerCase(Locale.ROOT);
            var meshes = locks.withArray("meshes");
            for (int i = 0; i < meshes.size(); i++) {
                JsonNode place = meshes.get(i).path("place");
                if (place.path("side").asText().equals(word)
                        && place.path("number").asInt() == number) {
                    return i;
                }
            }
            meshes.addObject().putObject("place").put("side", word).put("number", number);
            return meshes.size() - 1;
        }
    }

    /**
     * Where a hold came to stand in the brief.
     *
     * @param pointer JSON pointer of the field
     * @param hold the hold
     */
    record HeldEntry(String pointer, Hold hold) {
        /** Whether a problem at a pointer is about this hold or its mesh. */
        boolean concerns(String problem) {
            String mesh =
                    pointer.startsWith("/locks/meshes/") ? pointer.substring(0, pointer.lastIndexOf('/')) : pointer;
            return problem.equals(pointer) || problem.equals(mesh) || problem.startsWith(mesh + "/place");
        }

        String nameFor(String problem) {
            return problem.equals(pointer) ? hold.name() : hold.place();
        }
    }
}
