package io.github.seamstead.examples.reference;

import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiPredicate;

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
   * @param uses tells whether a test class uses a class of the library
   * @return one self-contained HTML page
   */
  public static String html(
      List<CheckedValue> values,
      Map<String, String> calculations,
      BiPredicate<String, String> uses) {
    Page page = new Page("Seamstead: checks against the world outside", "en");
    page.style("@media (min-width:80rem){header,main,nav{max-width:84rem}}\n");
    List<Coverage> coverage = coverage(values, calculations, uses);
    page.lead(lead(values, coverage));
    for (CheckKind kind : CheckKind.values()) {
      page.chapter(kind.title(), chapter(kind, of(kind, values)));
    }
    page.chapter("Every calculation", table(coverage));
    return page.html();
  }

  private static List<CheckedValue> of(CheckKind kind, List<CheckedValue> values) {
    return values.stream().filter(value -> CheckKind.of(value) == kind).toList();
  }

  private static Markup lead(List<CheckedValue> values, List<Coverage> coverage) {
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
    long without = coverage.stream().filter(row -> row.text().equals("none")).count();
    lead.element(
        "p",
        without
            + " of "
            + coverage.size()
            + " published calculations have no comparison in a test that uses their class; the last"
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
            "Expected and computed, " + calculation,
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
          Numbers.exact(v.expected()),
          Numbers.significant(v.got(), GOT_DIGITS),
          Numbers.significant(v.difference(), 2),
          Numbers.significant(v.tolerance(), 2),
          CheckKind.reason(v),
          v.holds() ? "yes" : "missed",
          v.citation());
    }
    return table;
  }

  /** How many comparisons name a calculation, stand in tests that use its class, in its package. */
  private record Coverage(String id, long named, long own, long around) {

    String text() {
      return named > 0 ? Long.toString(named) : own > 0 ? "at most " + own : "none";
    }
  }

  private static List<Coverage> coverage(
      List<CheckedValue> values,
      Map<String, String> calculations,
      BiPredicate<String, String> uses) {
    List<Coverage> coverage = new ArrayList<>();
    new TreeMap<>(calculations)
        .forEach(
            (id, type) -> {
              String inside = id.substring(0, id.lastIndexOf('.'));
              List<CheckedValue> around =
                  values.stream().filter(v -> isWithin(v.calculation(), inside)).toList();
              long own = around.stream().filter(v -> uses.test(v.test(), type)).count();
              long named = around.stream().filter(v -> v.calculation().equals(id)).count();
              coverage.add(new Coverage(id, named, own, around.size()));
            });
    return coverage;
  }

  private static boolean isWithin(String calculation, String inside) {
    return calculation.equals(inside) || calculation.startsWith(inside + ".");
  }

  private static Markup table(List<Coverage> coverage) {
    Markup chapter = new Markup();
    chapter.element(
        "p",
        "A plain number counts comparisons that name the calculation. Where tests name its package"
            + " only, at most says how many of those stand in test classes that use the class that"
            + " computes. None means none at all. Other comparisons of the package may reach a"
            + " calculation through sums that use it; they prove less.");
    Table table =
        new Table(
            "Comparisons of each published calculation",
            "calculation",
            "compared",
            "#in its package");
    for (Coverage row : coverage) {
      table.row(row.id(), row.text(), Long.toString(row.around()));
    }
    table.write(chapter);
    return chapter;
  }
}
