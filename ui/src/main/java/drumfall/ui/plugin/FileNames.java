// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The rules for names of exported files: good on one system, good on all.
 *
 * <p>Characters, edges and device names by Microsoft, <i>Naming Files, Paths, and Namespaces</i>.
 */
final class FileNames {
    /** The program's own list of the files of an export. */
    static final String LIST = "files.sha256";

    private static final int MOST_PARTS = 5;
    private static final int LONGEST_PART = 100;
    private static final Pattern ABSOLUTE = Pattern.compile("[/\\\\].*|[A-Za-z]:.*", Pattern.DOTALL);
    private static final Pattern REFUSED = Pattern.compile("[\\p{Cntrl}\\\\:*?\"<>|]");
    private static final Pattern DEVICE =
            Pattern.compile("(CON|PRN|AUX|NUL|CONIN\\$|CONOUT\\$|(COM|LPT)[0-9¹²³]) *(\\..*)?");

    private FileNames() {}

    /**
     * Whether a name is absolute or climbs out of its folder.
     *
     * @param name as the exporter gave it
     */
    static boolean leavesFolder(String name) {
        return ABSOLUTE.matcher(name).matches()
                || List.of(name.split("[/\\\\]", -1)).contains("..");
    }

    /**
     * The rule that a name breaks, if any: a key of the bundle.
     *
     * @param name as the exporter gave it
     */
    static Optional<String> brokenRule(String name) {
        String[] parts = name.split("/", -1);
        if (parts.length > MOST_PARTS) {
            return Optional.of("name.length");
        }
        if (key(name).equals(LIST)) {
            return Optional.of("name.reserved");
        }
        return List.of(parts).stream()
                .flatMap(part -> brokenByPart(part).stream())
                .findFirst();
    }

    private static Optional<String> brokenByPart(String part) {
        if (part.isEmpty() || part.length() > LONGEST_PART) {
            return Optional.of("name.length");
        }
        if (REFUSED.matcher(part).find()) {
            return Optional.of("name.character");
        }
        if (isEdge(part.charAt(0)) || isEdge(part.charAt(part.length() - 1))) {
            return Optional.of("name.edge");
        }
        return isDevice(part) ? Optional.of("name.device") : Optional.empty();
    }

    private static boolean isEdge(char character) {
        return character == ' ' || character == '.';
    }

    static boolean isDevice(String part) {
        return DEVICE.matcher(part.toUpperCase(Locale.ROOT)).matches();
    }

    /** Two names with one key are one file on some system. */
    static String key(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }
}
