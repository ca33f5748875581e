package io.github.seamstead.api.compare;

import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.text.Escapes;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The table of a comparison as data: one row for each variant, SI numbers, units in the keys. */
final class CompareTable {

  private CompareTable() {}

  /**
   * Writes the table as comma-separated values.
   *
   * @param comparison the comparison
   * @return the text, with a line of headings
   */
  public static String csv(Comparison comparison) {
    List<Measure> columns = comparison.columns();
    List<String> head = new ArrayList<>(List.of("variant", "name", "feasible", "best"));
    columns.forEach(m -> head.add(m.key()));
    head.addAll(List.of("soonest_weeks", "latest_weeks", "openEnded", "unpriced", "whyNot"));
    StringBuilder csv = new StringBuilder();
    line(csv, head);
    for (VariantRow row : comparison.rows()) {
      List<String> cells = new ArrayList<>();
      cells.add(Integer.toString(row.number()));
      cells.add(row.name());
      cells.add(row.isFeasible() ? "yes" : "no");
      cells.add(comparison.isBest(row) ? "yes" : "no");
      columns.forEach(m -> cells.add(row.value(m).map(Numbers::plain).orElse("")));
      cells.add(row.weeks().map(w -> Numbers.plain(w.low())).orElse(""));
      cells.add(row.weeks().map(w -> Numbers.plain(w.high())).orElse(""));
      cells.add(row.openEnded() ? "yes" : "no");
      cells.add(String.join("; ", row.unpriced()));
      cells.add(String.join("; ", row.whyNot()));
      line(csv, cells);
    }
    return csv.toString();
  }

  private static void line(StringBuilder csv, List<String> cells) {
    csv.append(cells.stream().map(Escapes::csv).collect(Collectors.joining(","))).append("\r\n");
  }
}
