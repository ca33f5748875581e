package io.github.seamstead.api.compare;

import io.github.seamstead.api.json.JsonWriter;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.text.Escapes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The table of a comparison as data: one row for each variant, SI numbers, units in the keys. */
public final class CompareTable {

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

  /**
   * Writes the comparison as JSON.
   *
   * @param comparison the comparison
   * @return the text
   */
  public static String json(Comparison comparison) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("seamsteadComparison", 1);
    all.put("job", comparison.job());
    all.put("quick", comparison.options().quick());
    all.put("effort", comparison.options().plan().effort());
    all.put("seed", Long.toString(comparison.options().plan().seed()));
    all.put("objectives", comparison.front().objectives().stream().map(Measure::word).toList());
    all.put("variants", comparison.rows().stream().map(row -> row(comparison, row)).toList());
    all.put("levers", comparison.levers().stream().map(CompareTable::lever).toList());
    return JsonWriter.text(all);
  }

  private static Map<String, Object> row(Comparison comparison, VariantRow row) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("variant", row.number());
    data.put("name", row.name());
    data.put("feasible", row.isFeasible());
    data.put("best", comparison.isBest(row));
    data.put("whyNot", row.whyNot());
    row.values().forEach((measure, value) -> data.put(measure.key(), value));
    row.weeks()
        .ifPresent(
            weeks -> {
              data.put("soonest_weeks", weeks.low());
              data.put("latest_weeks", weeks.high());
            });
    data.put("openEnded", row.openEnded());
    data.put("unpriced", row.unpriced());
    return data;
  }

  private static Map<String, Object> lever(LeverRow row) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("lever", row.lever().name());
    data.put("on", row.lever().on().word());
    data.put("feasible", row.after().isFeasible());
    data.put("whyNot", row.after().whyNot());
    data.put("savedMoney", row.saved(Measure.MONEY));
    data.put("savedHours_h", row.saved(Measure.HOURS));
    Map<String, Object> moves = new LinkedHashMap<>();
    row.elsewhere()
        .forEach(
            m -> row.saved(m).ifPresent(saved -> moves.put(m.key(), saved == 0 ? 0.0 : -saved)));
    data.put("changes", moves);
    data.put("price", row.lever().price());
    return data;
  }
}
