package io.github.seamstead.api.book;

import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.api.plan.Chapter;
import io.github.seamstead.api.plan.ChapterCaution;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the chapters share while a book is written: the plan, its words, and the page, drawings and
 * lists as they grow. Not thread-safe.
 */
final class BookContext {

  private final JobPlan plan;
  private final Words words;
  private final Page page;
  private final Map<String, Drawing> drawings = new LinkedHashMap<>();
  private final Map<String, String> lists = new LinkedHashMap<>();
  private Markup body = new Markup();

  BookContext(JobPlan plan, Words words, Page page) {
    this.plan = plan;
    this.words = words;
    this.page = page;
  }

  JobPlan plan() {
    return plan;
  }

  Words words() {
    return words;
  }

  /** The body of the chapter that is being written. */
  Markup body() {
    return body;
  }

  Map<String, Drawing> drawings() {
    return drawings;
  }

  /** CSV lists by file name. */
  Map<String, String> lists() {
    return lists;
  }

  /** Ends a chapter: its cautions come last, so that they are read with the result. */
  void end(Chapter chapter) {
    for (ChapterCaution caution : plan.cautions()) {
      if (caution.chapter() == chapter) {
        caution(caution.caution());
      }
    }
    end(chapter.title());
  }

  void end(String title) {
    page.chapter(title, body);
    body = new Markup();
  }

  void heading(String title) {
    body.element("h3", title).raw("\n");
  }

  void paragraph(String text) {
    body.element("p", text).raw("\n");
  }

  void note(String text) {
    body.element("p", text, "class", "note").raw("\n");
  }

  void table(Table table) {
    if (!table.isEmpty()) {
      table.write(body);
    }
  }

  /** Shows a drawing in the chapter and keeps it as a file. */
  void figure(Drawing drawing) {
    keep(drawing);
    body.open("figure").raw(drawing.inline());
    body.element("figcaption", drawing.title() + ". " + drawing.description()).closeLine();
  }

  /** Keeps a drawing as a file alone. */
  void keep(Drawing drawing) {
    drawings.put(drawing.name(), drawing);
  }

  void list(String name, List<List<String>> rows) {
    StringBuilder csv = new StringBuilder();
    for (List<String> row : rows) {
      List<String> cells = new ArrayList<>();
      row.forEach(cell -> cells.add(Csv.cell(cell)));
      csv.append(String.join(",", cells)).append("\r\n");
    }
    lists.put(name, csv.toString());
  }

  private void caution(Caution caution) {
    body.open("div", "class", "caution", "role", "note");
    body.open("p").element("strong", "Caution: " + caution.hazard().label() + ". ");
    body.text(caution.text()).close();
    body.closeLine();
  }

  /**
   * Writes a small error to a tenth of a millimetre, in any unit system: tapes hardly show less.
   */
  static String millimetres(double metres) {
    return Numbers.fixed(metres * 1000, 1) + "\u00a0mm";
  }

  static String number(double value, int decimals) {
    return Numbers.fixed(value, decimals);
  }
}
