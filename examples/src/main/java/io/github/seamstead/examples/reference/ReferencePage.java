package io.github.seamstead.examples.reference;

import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.shared.quantity.Numbers;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Makes the reference page from the files that the tests of each module leave in {@code
 * target/outside-checks}. The page holds nothing else, so it cannot say more than the tests did.
 */
public final class ReferencePage {

  private static final List<String> MODULES =
      List.of("shared", "geometry", "materials", "assembly", "api", "examples");

  private ReferencePage() {}

  /**
   * Reads the comparisons of all modules.
   *
   * @param project the project's top folder
   * @return the comparisons by calculation, each as often as different tests made it
   * @throws IOException if a file cannot be read
   */
  public static List<CheckedValue> read(Path project) throws IOException {
    LinkedHashSet<CheckedValue> values = new LinkedHashSet<>();
    for (String module : MODULES) {
      Path folder = project.resolve(module).resolve("target/outside-checks");
      if (Files.isDirectory(folder)) {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.tsv")) {
          List<Path> sorted = new ArrayList<>();
          files.forEach(sorted::add);
          sorted.sort(Comparator.naturalOrder());
          for (Path file : sorted) {
            Files.readAllLines(file).forEach(line -> values.add(CheckedValue.parse(line)));
          }
        }
      }
    }
    return List.copyOf(values);
  }

  /**
   * Writes the page.
   *
   * @param values the comparisons
   * @return one self-contained HTML page with a chapter for each calculation
   */
  public static String html(List<CheckedValue> values) {
    Map<String, List<CheckedValue>> byCalculation = new TreeMap<>();
    values.forEach(
        v -> byCalculation.computeIfAbsent(v.calculation(), c -> new ArrayList<>()).add(v));
    Page page = new Page("Seamstead: checks against the world outside", "en");
    page.lead(lead(values));
    byCalculation.forEach((calculation, rows) -> page.chapter(calculation, table(rows)));
    return page.html();
  }

  private static Markup lead(List<CheckedValue> values) {
    Map<String, Integer> counts = new TreeMap<>();
    values.forEach(v -> counts.merge(v.status(), 1, Integer::sum));
    Markup lead = new Markup();
    lead.element(
        "p",
        values.size()
            + " values that somebody else published, beside what the library computes for the same"
            + " case. Written by the tests; a difference beyond the tolerance stops the build.");
    Table table = new Table("How the values were seen", "status", "#values");
    counts.forEach((status, count) -> table.row(status, Integer.toString(count)));
    table.write(lead);
    return lead;
  }

  private static Markup table(List<CheckedValue> rows) {
    Table table =
        new Table(
            "Published and computed",
            "case",
            "#expected",
            "#got",
            "#difference",
            "#tolerance",
            "source");
    for (CheckedValue v : rows) {
      table.row(
          v.what(),
          Numbers.plain(v.expected()),
          Numbers.significant(v.got(), 9),
          Numbers.significant(v.difference(), 2),
          Numbers.significant(v.tolerance(), 2),
          v.citation());
    }
    Markup markup = new Markup();
    table.write(markup);
    return markup;
  }
}
