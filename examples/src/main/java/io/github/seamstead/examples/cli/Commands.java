package io.github.seamstead.examples.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import picocli.CommandLine;

/** The commands by name. */
final class Commands {

  private Commands() {}

  private static Map<String, Function<Console, Object>> all() {
    Map<String, Function<Console, Object>> all = new LinkedHashMap<>();
    all.put("plan", PlanCommand::new);
    all.put("changes", ChangesCommand::new);
    all.put("check", CheckCommand::new);
    all.put("compare", CompareCommand::new);
    all.put("matters", MattersCommand::new);
    all.put("soil", SoilCommand::new);
    all.put("mix", MixCommand::new);
    all.put("joins", JoinsCommand::new);
    all.put("forms", FormsCommand::new);
    all.put("fill", FillCommand::new);
    all.put("schema", SchemaCommand::new);
    all.put("lessons", LessonsCommand::new);
    all.put("page", PageCommand::new);
    all.put("references", ReferencesCommand::new);
    all.put("layout", LayoutCommand::new);
    all.put("layout-table", LayoutTableCommand::new);
    return all;
  }

  /** The names of all commands. */
  static Set<String> names() {
    return all().keySet();
  }

  /**
   * Adds the one command that is asked for; all of them when none is. Each command costs start-up
   * time, so a run pays for its own alone.
   */
  static void addTo(CommandLine line, String[] args, Console console) {
    Map<String, Function<Console, Object>> all = all();
    String asked = args.length == 0 ? "" : args[0];
    all.forEach(
        (name, command) -> {
          if (!all.containsKey(asked) || name.equals(asked)) {
            line.addSubcommand(name, command.apply(console));
          }
        });
  }
}
