// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.plugin.api.trial.TrialHandover;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The package against the 3MF Core Specification 1.4.0; section numbers are its own. */
class PackageTest {
    private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

    private static final Map<String, byte[]> FILES = new LinkedHashMap<>();
    private static TrialFolder folder;

    @BeforeAll
    static void export() throws IOException {
        folder = new TrialFolder();
        new SolidsExporter()
                .write(TrialHandover.eightDays(), Movements.eightDays(), folder, ExportProgress.unwatched());
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(folder.bytes("movement.3mf")))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                FILES.put(entry.getName(), zip.readAllBytes());
            }
        }
    }

    private static Document xml(String name) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(FILES.get(name)));
    }

    private static List<Element> elements(Document document, String name) {
        return elements(document.getElementsByTagNameNS("*", name));
    }

    private static List<Element> elements(NodeList nodes) {
        List<Element> elements = new ArrayList<>();
        // Asked for once: each time it is, the parser looks through all that comes after the last node found.
        int count = nodes.getLength();
        for (int i = 0; i < count; i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    @Test
    void content_types_name_relationships_and_model() throws Exception {
        // Appendix C.1; the namespace is ECMA-376 part 2's, from memory.
        Document types = xml("[Content_Types].xml");
        assertThat(types.getDocumentElement().getNamespaceURI())
                .isEqualTo("http://schemas.openxmlformats.org/package/2006/content-types");
        assertThat(elements(types, "Default"))
                .extracting(e -> e.getAttribute("Extension") + " " + e.getAttribute("ContentType"))
                .containsExactlyInAnyOrder(
                        "rels application/vnd.openxmlformats-package.relationships+xml",
                        "model application/vnd.ms-package.3dmanufacturing-3dmodel+xml");
    }

    @Test
    void exactly_one_start_part_is_named() throws Exception {
        // 2.1.1, table 2-1 and appendix C.2.
        Document rels = xml("_rels/.rels");
        assertThat(rels.getDocumentElement().getNamespaceURI())
                .isEqualTo("http://schemas.openxmlformats.org/package/2006/relationships");
        assertThat(elements(rels, "Relationship")).singleElement().satisfies(rel -> {
            assertThat(rel.getAttribute("Type"))
                    .isEqualTo("http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel");
            assertThat(rel.getAttribute("Target")).isEqualTo("/3D/3dmodel.model");
        });
        assertThat(FILES).containsOnlyKeys("[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model");
    }

    @Test
    void the_model_is_in_millimetres_and_the_core_namespace() throws Exception {
        // 3.4 and appendix C.3.
        Element model = xml("3D/3dmodel.model").getDocumentElement();
        assertThat(model.getLocalName()).isEqualTo("model");
        assertThat(model.getNamespaceURI()).isEqualTo(CORE);
        assertThat(model.getAttribute("unit")).isEqualTo("millimeter");
    }

    @Test
    void there_is_one_object_for_each_part_and_one_item_for_each_piece() throws Exception {
        Document model = xml("3D/3dmodel.model");
        var parts = Movements.eightDays();
        List<Element> objects = elements(model, "object");
        assertThat(objects)
                .extracting(o -> o.getAttribute("name"))
                .containsExactlyElementsOf(parts.stream().map(p -> p.name()).toList());
        Set<String> ids = new HashSet<>();
        elements(model, "basematerials").forEach(e -> ids.add(e.getAttribute("id")));
        // 3.4.1: ids are unique among all resources, and what an item names comes before it.
        assertThat(objects).allMatch(o -> ids.add(o.getAttribute("id")));
        for (int i = 0; i < parts.size(); i++) {
            String id = objects.get(i).getAttribute("id");
            assertThat(elements(model, "item"))
                    .filteredOn(item -> item.getAttribute("objectid").equals(id))
                    .hasSize(parts.get(i).count());
        }
        assertThat(elements(model, "base"))
                .extracting(b -> b.getAttribute("name"))
                .containsExactly("PLA");
    }

    @Test
    void every_object_is_manifold_with_normals_outwards() throws Exception {
        // 4.1 and 4.1.1: each edge in exactly two triangles, consistently oriented, outward normals.
        for (Element object : elements(xml("3D/3dmodel.model"), "object")) {
            List<Element> vertices = elements(object.getElementsByTagNameNS(CORE, "vertex"));
            double six = 0;
            Set<Edge> edges = new HashSet<>();
            int sides = 0;
            for (Element t : elements(object.getElementsByTagNameNS(CORE, "triangle"))) {
                int[] v = {number(t, "v1"), number(t, "v2"), number(t, "v3")};
                for (int i = 0; i < 3; i++) {
                    edges.add(new Edge(v[i], v[(i + 1) % 3]));
                    sides++;
                }
                six += triple(place(vertices.get(v[0])), place(vertices.get(v[1])), place(vertices.get(v[2])));
            }
            assertThat(edges).hasSize(sides).allMatch(edge -> edges.contains(edge.back()));
            assertThat(six).as(object.getAttribute("name")).isPositive();
        }
    }

    /** Spread well over a set's places, unlike a long of both numbers, whose hash is nought for neighbours. */
    private record Edge(int from, int to) {
        Edge back() {
            return new Edge(to, from);
        }
    }

    private static int number(Element element, String name) {
        return Integer.parseInt(element.getAttribute(name));
    }

    /** Read as a 32-bit float, which the written decimal names without doubt. */
    private static double[] place(Element vertex) {
        return new double[] {
            Float.parseFloat(vertex.getAttribute("x")),
            Float.parseFloat(vertex.getAttribute("y")),
            Float.parseFloat(vertex.getAttribute("z"))
        };
    }

    private static double triple(double[] a, double[] b, double[] c) {
        return a[0] * (b[1] * c[2] - b[2] * c[1])
                + a[1] * (b[2] * c[0] - b[0] * c[2])
                + a[2] * (b[0] * c[1] - b[1] * c[0]);
    }

    @Test
    void vertices_are_the_stl_file_s_to_the_last_bit() throws Exception {
        Element object = elements(xml("3D/3dmodel.model"), "object").get(0);
        StlSurface stl = StlSurface.read(folder.bytes(object.getAttribute("name") + ".stl"));
        double six = 0;
        List<Element> vertices = elements(object.getElementsByTagNameNS(CORE, "vertex"));
        for (Element t : elements(object.getElementsByTagNameNS(CORE, "triangle"))) {
            six += triple(
                    place(vertices.get(number(t, "v1"))),
                    place(vertices.get(number(t, "v2"))),
                    place(vertices.get(number(t, "v3"))));
        }
        // The same sum over the same numbers, in another order of terms.
        assertThat(six / 6).isCloseTo(stl.volume(), within(1e-9 * stl.volume()));
    }

    @Test
    void the_same_movement_gives_the_same_bytes() throws IOException {
        TrialFolder again = new TrialFolder();
        new SolidsExporter().write(TrialHandover.eightDays(), Movements.eightDays(), again, ExportProgress.unwatched());
        assertThat(again.names()).isEqualTo(folder.names());
        for (String name : folder.names()) {
            assertThat(again.bytes(name)).as(name).isEqualTo(folder.bytes(name));
        }
    }

    @Test
    void every_stl_file_has_the_length_that_its_count_of_facets_asks_for() {
        // 84 + 50 n bytes, and a header that does not begin like a text file's, as quoted in published descriptions.
        for (String name : folder.names()) {
            if (name.endsWith(".stl")) {
                byte[] bytes = folder.bytes(name);
                int count = StlSurface.read(bytes).facetCount();
                assertThat(bytes).hasSize(84 + 50 * count);
                assertThat(new String(bytes, 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
                        .isNotEqualTo("solid");
            }
        }
    }

    @Test
    void the_list_has_a_line_for_each_part() {
        List<String> lines = folder.text("parts.csv").lines().toList();
        assertThat(lines).hasSize(Movements.eightDays().size() + 1);
        assertThat(lines).anyMatch(line -> line.matches("pillar,4,\"PLA\",\\d+\\.\\d\\d,,,[0-9a-f]{64}"));
        assertThat(lines)
                .anyMatch(line ->
                        line.startsWith("arbor-2-wheel-and-pinion,1,\"PLA\",") && line.contains(",64 8,1 1.5,"));
    }
}
