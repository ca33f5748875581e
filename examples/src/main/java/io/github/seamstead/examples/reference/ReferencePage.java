package io.github.seamstead.examples.reference;

import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The reference page: what the tests compared with values from outside, kept apart by what each
 * comparison can show, and every published calculation with how often it was compared. The page
 * holds nothing else, so it cannot say more than the tests did.
 */
public final class ReferencePage {

  private static final int GOT_DIGITS = 9;

  private ReferencePage() {}

  /**
   * Writes the page.
   *
   * @param values the comparisons
   * @param calculations the class that computes, by the id of each published calculation
   * @return one self-contained HTML page
   */
  public static String html(List<CheckedValue> values, Map<String, String> calculations) {
    Page page = new Page("Seamstead: checks against the world outside", "en");
    page.lead(lead(values, calculations));
    for (CheckKind kind : CheckKind.values()) {
      page.chapter(kind.title(), chapter(kind, of(kind, values)));
    }
    page.chapter("Every calculation", coverage(values, calculations));
    return page.html();
  }

  private static List<CheckedValue> of(CheckKind kind, List<CheckedValue> values) {
    return values.stream().filter(value -> CheckKind.of(value) == kind).toList();
  }

  private static Markup lead(List<CheckedValue> values, Map<String, String> calculations) {
    Markup lead = new Markup();
    lead.element(
        "p",
        values.size()
            + " comparisons, written by the tests as they ran. They are not all of one worth: the"
            + " table keeps apart what each can show. A value counts as missed if the difference is"
            + " beyond the tolerance; it is shown all the same.");
    Table table = new Table("What was compared", "kind", "how seen", "#values", "#missed");
    for (CheckKind kind : CheckKind.values()) {
      Map<String, List<CheckedValue>> byStatus = new TreeMap<>();
      for (CheckedValue value : of(kind, values)) {
        byStatus.computeIfAbsent(value.status(), s -> new ArrayList<>()).add(value);
      }
      byStatus.forEach(
          (status, rows) ->
              table.row(kind.title(), status, Integer.toString(rows.size()), missed(rows)));
    }
    table.write(lead);
    long without =
        calculations.entrySet().stream()
            .filter(entry -> own(entry.getKey(), entry.getValue(), values) == 0)
            .count();
    lead.element(
        "p",
        "Of "
            + calculations.size()
            + " published calculations "
            + without
            + " have no comparison that names them or stands in the tests of their class; the last"
            + " chapter lists them with the word none.");
    lead.element(
        "p",
        "How seen: found means that the source, or a page that quotes it, was read; from memory"
            + " that it was quoted without being seen; derived that it was worked out apart from"
            + " the project; common practice that there is no source.");
    return lead;
  }

  private static String missed(List<CheckedValue> rows) {
    return Long.toString(rows.stream().filter(value -> !value.holds()).count());
  }

  private static Markup chapter(CheckKind kind, List<CheckedValue> values) {
    Markup chapter = new Markup();
    chapter.element("p", kind.meaning());
    Map<String, List<CheckedValue>> byCalculation = new TreeMap<>();
    values.forEach(
        v -> byCalculation.computeIfAbsent(v.calculation(), c -> new ArrayList<>()).add(v));
    if (byCalculation.isEmpty()) {
      chapter.element("p", "None.");
    }
    byCalculation.forEach(
        (calculation, rows) -> {
          chapter.element("h3", calculation);
          table(calculation, rows).write(chapter);
        });
    return chapter;
  }

  private static Table table(String calculation, List<CheckedValue> rows) {
    Table table =
        new Table(
            calculation,
            "case",
            "#expected",
            "#got",
            "#difference",
            "#tolerance",
            "why that tolerance",
            "met",
            "source");
    for (CheckedValue v : rows) {
      table.row(
          v.what(),
          Numbers.plain(v.expected()),
          Numbers.significant(v.got(), GOT_DIGITS),
          Numbers.significant(v.difference(), 2),
          Numbers.significant(v.tolerance(), 2),
          CheckKind.reason(v),
          v.holds() ? "yes" : "missed",
          v.citation());
    }
    return table;
  }

  private static Markup coverage(List<CheckedValue> values, Map<String, String> calculations) {
    Markup chapter = new Markup();
    chapter.element(
        "p",
        "A comparison belongs to a calculation if it carries its id, or if the tests of the class"
            + " that computes it made it. Comparisons of the package may reach it too, through sums"
            + " that use it; they are counted apart and prove less.");
    Table table =
        new Table(
            "Comparisons of each published calculation",
            "calculation",
            "its own",
            "#of its package");
    for (String id : calculations.keySet()) {
      long own = own(id, calculations.getOrDefault(id, ""), values);
      String inside = id.substring(0, id.lastIndexOf('.'));
      long around = values.stream().filter(v -> v.calculation().startsWith(inside)).count();
      table.row(id, own == 0 ? "none" : Long.toString(own), Long.toString(around));
    }
    table.write(chapter);
    return chapter;
  }

  /** Counts the comparisons that carry the id or stand in the tests of the class. */
  private static long own(String id, String type, List<CheckedValue> values) {
    return values.stream()
        .filter(
            v ->
                v.calculation().equals(id)
                    || (id.startsWith(v.calculation() + ".") && v.isOfTestsOf(type)))
        .count();
  }
}
