// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.xml.stream.XMLStreamException;

/** A 3MF package: content types, the relationship to the model, the model (3MF Core Specification 1.4.0, chapter 2). */
final class PackageWriter {
    static final String CONTENT_TYPES = "http://schemas.openxmlformats.org/package/2006/content-types";
    static final String RELATIONSHIPS = "http://schemas.openxmlformats.org/package/2006/relationships";
    static final String MODEL_TYPE = "application/vnd.ms-package.3dmanufacturing-3dmodel+xml";
    static final String START_PART = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";
    static final String MODEL = "3D/3dmodel.model";

    private static final String RELATIONSHIP_TYPE = "application/vnd.openxmlformats-package.relationships+xml";
    private static final String XML = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

    /** The first moment a zip archive can name: the same parts give the same bytes at any time and place. */
    private static final LocalDateTime WHEN = LocalDateTime.of(1980, 1, 1, 0, 0);

    private static final int MORSELS = 1 << 16;

    private PackageWriter() {}

    /**
     * Writes a package.
     *
     * @param title of the whole
     * @param parts its parts
     * @param width of the rows the parts are laid out in, mm
     * @param out not closed here
     */
    static void write(String title, List<MeshedPart> parts, double width, OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        entry(zip, "[Content_Types].xml", contentTypes());
        entry(zip, "_rels/.rels", relationships());
        zip.putNextEntry(dated(MODEL));
        // Deflating the XML writer's morsels one by one takes twenty times as long.
        OutputStream morsels = new BufferedOutputStream(zip, MORSELS);
        try {
            ModelWriter.write(title, parts, width, morsels);
            morsels.flush();
        } catch (XMLStreamException broken) {
            throw new IOException("The model (" + title + ") could not be written as 3MF.", broken);
        }
        zip.closeEntry();
        zip.finish();
    }

    private static ZipEntry dated(String name) {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(WHEN);
        return entry;
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(dated(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static String contentTypes() {
        return XML + "<Types xmlns=\"" + CONTENT_TYPES + "\">"
                + "<Default Extension=\"rels\" ContentType=\"" + RELATIONSHIP_TYPE + "\"/>"
                + "<Default Extension=\"model\" ContentType=\"" + MODEL_TYPE + "\"/></Types>\n";
    }

    private static String relationships() {
        return XML + "<Relationships xmlns=\"" + RELATIONSHIPS + "\">" + "<Relationship Id=\"rel0\" Type=\""
                + START_PART + "\" Target=\"/" + MODEL + "\"/></Relationships>\n";
    }
}
