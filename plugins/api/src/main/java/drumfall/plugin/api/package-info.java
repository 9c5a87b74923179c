/**
 * The plugin api: how a train leaves the program as files, for plugins that the program has never seen.
 *
 * <p>A plugin is one jar in a plugin folder. It holds an {@link drumfall.plugin.api.Exporter} named in {@code
 * META-INF/services}, whatever libraries the exporter needs, and a manifest with {@code Drumfall-Api: 1.1}. It sees this
 * package, the records of the solver that {@link drumfall.plugin.api.Handover} leads to (packages quantity, sheet,
 * ratio, train, teeth, parts, layout, fit, fitting, power, brief, rating and making), the exact fractions they are made
 * of, and the JDK; nothing else of the program or its libraries, and nothing of other plugins. {@code plugins/template}
 * is a project to start from.
 *
 * <p><b>Version check.</b> The api asked for stands in the manifest, where it can be read before any code of the plugin
 * runs. Rejected: a method {@code apiVersion()}, because to ask it is to run the plugin, and a plugin built against a newer
 * api may fail on the way there with a linkage error that explains nothing; and a constant compiled into the plugin,
 * because javac copies the value of the api's own constant into the plugin, so that it states what it was compiled
 * against and not what it needs, and reading it without running the class takes a class-file parser. A jar without the
 * attribute is refused: guessing that it means 1.0 would be a default that changes an answer.
 *
 * <p><b>Settings.</b> What a maker may set about an export is declared as data ({@link
 * drumfall.plugin.api.ExportSetting}), so that terminal and window show it, check it and remember it without running the
 * plugin. They are called settings because an option is a train of the front. What the brief says already is no setting.
 * Rejected: handing over a map of texts, which every exporter would read in its own way, and lets a name be misspelt; here
 * the declared constant is the key, and brings the type of its value along.
 *
 * <p><b>Stability.</b> Every type carries {@link drumfall.plugin.api.Stability}. The interface has three methods to
 * implement; whatever is added later has a default, and exporters written for 1.0 load and run as they are. Records that
 * an exporter is handed may gain components, which a plugin that only reads them does not notice.
 *
 * <p>May depend on the solver's records and the JDK. Rejected: handing out a path to write to; a stream for a checked
 * name lets the program refuse names, hash what is written and shut the folder when a plugin has run out of time.
 *
 * @since 1.0
 */
package drumfall.plugin.api;
