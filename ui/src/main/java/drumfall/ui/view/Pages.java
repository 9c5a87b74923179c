// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import drumfall.ui.plugin.LoadedPlugin;
import drumfall.ui.plugin.PluginFault;
import drumfall.ui.presenter.Exports;
import drumfall.ui.presenter.Texts;
import java.awt.Frame;
import java.util.function.Supplier;

/** The pages beside the main window: about, cautions, plugins, export. */
final class Pages {
    private final Frame owner;
    private final Exports exports;
    private final String version;

    Pages(Frame owner, Exports exports, String version) {
        this.owner = owner;
        this.exports = exports;
        this.version = version;
    }

    void about() {
        new Page(owner, Texts.of("about.title"), "about")
                .heading(Texts.of("app.name"))
                .line(Texts.of("about.text", version))
                .line(Texts.of("about.licence"))
                .line(Texts.of("about.choco"))
                .line(Texts.of("about.notices", Texts.of("about.notices.list")))
                .line(Texts.of("cautions.limits"))
                .open();
    }

    void cautions() {
        new Page(owner, Texts.of("cautions.title"), "cautions")
                .heading(Texts.of("cautions.title"))
                .line(Texts.of("cautions.weight"))
                .line(Texts.of("cautions.winding"))
                .line(Texts.of("cautions.making"))
                .line(Texts.of("cautions.limits"))
                .open();
    }

    void plugins() {
        Page page = new Page(owner, Texts.of("plugins.title"), "plugins").heading(Texts.of("plugins.title"));
        if (!exports.loaded()) {
            page.line(Texts.of("plugins.loading"));
        } else if (exports.report().isEmpty()) {
            page.line(Texts.of("plugins.none")).line(Texts.of("plugins.none.next"));
            exports.folders().forEach(folder -> page.line(folder.path().toString()));
        }
        exports.report().forEach(plugin -> describe(page, plugin));
        page.open();
    }

    /**
     * What is exported and how.
     *
     * @param choice asks where to
     * @param proposed name of a zip file
     */
    void export(FileChoice choice, Supplier<String> proposed) {
        new ExportPage(owner, exports, choice, proposed).open();
    }

    private static void describe(Page page, LoadedPlugin plugin) {
        String loaded = plugin.version().isEmpty()
                ? Texts.of("plugins.noversion")
                : Texts.of("plugins.version", plugin.version());
        page.heading(plugin.name()).line(loaded).line(plugin.file().toString());
        plugin.exporters().forEach(exporter -> page.line(Texts.of("plugins.exports", exporter.id(), exporter.title())));
        plugin.faults().stream().map(PluginFault::sentence).forEach(page::note);
    }
}
