package io.github.seamstead.examples.forms;

import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.geometry.survey.Node;
import io.github.seamstead.geometry.survey.TapingRound;
import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.QuantityText;
import io.github.seamstead.shared.quantity.UnitSystem;
import io.github.seamstead.shared.text.Escapes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes the forms of a job: one page to print, and a table for each form. */
public final class FieldForms {

  /** Blank cells high enough for a pencil; each form starts a page of its own. */
  private static final String STYLE =
      """
      nav{display:none}
      table{table-layout:fixed;width:99%;font-size:10pt}
      td,th{border:.25mm solid #333;padding:1.2mm 1.5mm;height:7mm;overflow-wrap:anywhere}
      tr{break-inside:avoid}
      thead{display:table-header-group}
      .two{columns:2;column-gap:6mm}
      .two h3{break-after:avoid;margin-top:0}
      .two th:first-child{width:10mm}
      .two th:last-child{width:40%}
      @media(max-width:600px){.two{columns:1}}
      @media print{main>section:first-child h2{break-before:auto}}
      @page{size:A4;margin:12mm 12mm 14mm 20mm}
      """;

  private FieldForms() {}

  /**
   * Writes the forms.
   *
   * @param plan the plan of the job's frame
   * @param name the name of the job
   * @param units the units that lengths are printed in
   * @return the contents by file name
   */
  public static Map<String, String> of(JobPlan plan, String name, UnitSystem units) {
    Map<String, String> files = new LinkedHashMap<>();
    Page page = new Page(name + ": field forms", "en");
    plan.frame()
        .ifPresent(
            frame -> {
              TapingRound round = TapingRound.of(frame.surveyShape());
              files.put(Forms.SURVEY, surveyTable(round, units));
              page.chapter("Survey sheet", surveySheet(round, units));
            });
    files.put(Forms.STOCK, stockTable(units));
    page.chapter("Stock sheet", stockSheet());
    files.put(Forms.PEGS, pegTable(units));
    page.chapter("Peg test sheet", pegSheet());
    files.put("forms.html", page.style(STYLE).html());
    return files;
  }

  private static String length(double metres, UnitSystem units) {
    return units == UnitSystem.METRIC
        ? QuantityText.write(metres, Dimension.LENGTH, "m", 3)
        : QuantityText.feetAndInches(metres, 16);
  }

  private static String stand(TapingRound.Stand stand) {
    return stand.at().map(node -> "ladder at " + node.name()).orElse("on the ground");
  }

  private static String kind(TapingRound.Wanted wanted) {
    return wanted.quantity() == TapingRound.Quantity.DISTANCE ? Forms.DISTANCE : Forms.RISE;
  }

  /** The unit that a bare number is in, to be changed by who writes another. */
  private static String unit(UnitSystem units) {
    return units == UnitSystem.METRIC ? "m" : "in";
  }

  private static String surveyTable(TapingRound round, UnitSystem units) {
    List<List<String>> rows = new ArrayList<>();
    int order = 1;
    for (TapingRound.Stand stand : round.stands()) {
      for (TapingRound.Wanted wanted : stand.readings()) {
        rows.add(
            List.of(
                Integer.toString(order++),
                stand(stand),
                kind(wanted),
                wanted.from().name(),
                wanted.to().name(),
                length(wanted.wanted(), units),
                "",
                unit(units)));
      }
    }
    return csv(Forms.SURVEY_COLUMNS, rows);
  }

  private static String stockTable(UnitSystem units) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < Forms.STOCK_ROWS; i++) {
      List<String> row = new ArrayList<>(Collections.nCopies(Forms.STOCK_COLUMNS.size(), ""));
      row.set(row.size() - 1, unit(units));
      rows.add(row);
    }
    return csv(Forms.STOCK_COLUMNS, rows);
  }

  private static String pegTable(UnitSystem units) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 1; i <= Forms.PEG_ROWS; i++) {
      rows.add(List.of(Integer.toString(i), "", units == UnitSystem.METRIC ? "kgf" : "lbf"));
    }
    return csv(Forms.PEG_COLUMNS, rows);
  }

  private static String csv(List<String> columns, List<List<String>> rows) {
    StringBuilder text = new StringBuilder();
    line(text, columns);
    rows.forEach(row -> line(text, row));
    return text.toString();
  }

  private static void line(StringBuilder text, List<String> cells) {
    text.append(String.join(",", cells.stream().map(Escapes::csv).toList())).append("\r\n");
  }

  private static Markup surveySheet(TapingRound round, UnitSystem units) {
    Markup to = new Markup();
    to.element(
        "p",
        "Pole centre to pole centre, the tape pulled straight. Corners B1, B2 … run"
            + " counter-clockwise seen from above, T1 stands over B1. One reads aloud, the other"
            + " writes and reads back. A rise is how much higher the second point is, by water"
            + " hose. Write what the tape says, not what is wanted.");
    boolean raised = round.stands().stream().anyMatch(stand -> stand.at().isPresent());
    if (raised) {
      to.element(
          "p",
          "WARNING A fall from a ladder kills: tie it off, on firm ground, one person at its foot;"
              + " local rules for work at height decide.");
    }
    to.open("div", "class", "two");
    int order = 1;
    for (TapingRound.Stand stand : round.stands()) {
      to.element("h3", stand(stand));
      open(to, "no.", "tape", "wanted", "reading");
      for (TapingRound.Wanted wanted : stand.readings()) {
        row(
            to,
            Integer.toString(order++),
            (wanted.quantity() == TapingRound.Quantity.RISE ? "rise " : "")
                + wanted.from().name()
                + "–"
                + wanted.to().name(),
            length(wanted.wanted(), units),
            "");
      }
      to.close().close();
    }
    return to.close();
  }

  private static Markup stockSheet() {
    Markup to = new Markup();
    to.element(
        "p",
        "Spread each sheet good side up, a long edge towards you: length along it, width across."
            + " Write its name on it. Tape each in two places and write the least. Flaws: where"
            + " the lower left corner lies, from the left and from the edge at your feet, then how"
            + " far along and across; a second flaw takes a second line of the same name."
            + " Reinforced edges: bottom, right, top, left.");
    open(
        to,
        "name",
        "length",
        "width",
        "how many",
        "reinforced",
        "flaw from left",
        "from bottom",
        "along",
        "across",
        "what");
    for (int i = 0; i < Forms.STOCK_ROWS; i++) {
      row(to, Collections.nCopies(10, "").toArray(String[]::new));
    }
    return to.close().close();
  }

  private static Markup pegSheet() {
    Markup to = new Markup();
    to.element(
        "p",
        "On the ground that counts, wet if it can be: drive each peg as it will stand, hook a"
            + " scale to it and pull along the line of the rope, slowly, until it begins to move."
            + " Write the greatest pull. Three pegs at least, not side by side.");
    to.element(
        "p", "WARNING A peg that lets go flies: nobody in line with it, gloves and glasses on.");
    open(to, "peg", "where", "pull when it moved");
    for (int i = 1; i <= Forms.PEG_ROWS; i++) {
      row(to, Integer.toString(i), "", "");
    }
    return to.close().close();
  }

  private static void open(Markup to, String... columns) {
    to.open("table").open("thead").open("tr");
    for (String column : columns) {
      to.element("th", column, "scope", "col");
    }
    to.close().close().open("tbody");
  }

  private static void row(Markup to, String... cells) {
    to.open("tr");
    for (String cell : cells) {
      if (cell.isEmpty()) {
        to.element("td", "", "class", "b");
      } else {
        to.element("td", cell);
      }
    }
    to.close();
  }

  /** The corners that a survey names. */
  static boolean isNode(String name) {
    try {
      Node.parse(name);
      return true;
    } catch (IllegalArgumentException e) {
      return false;
    }
  }
}
