package io.github.seamstead.api.book;

import io.github.seamstead.api.page.Anchors;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.api.plan.Chapter;
import io.github.seamstead.api.plan.ChapterCaution;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.text.Escapes;
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
  private final Anchors names = new Anchors();
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
    body.open("figure").raw(keep(drawing).inline());
    body.element("figcaption", drawing.title() + ". " + drawing.description()).closeLine();
  }

  /** Keeps a drawing as a file, under a name that no other of the book has, and gives it so. */
  Drawing keep(Drawing drawing) {
    Drawing named = drawing.named(names.unique(drawing.name()));
    drawings.put(named.name(), named);
    return named;
  }

  /** Lists the drawings: a file's name is plain and short, what it shows has its own name here. */
  void listDrawings() {
    if (drawings.isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("file", "drawing"));
    drawings.values().forEach(d -> rows.add(List.of("drawings/" + d.name() + ".svg", d.title())));
    list("drawings.csv", rows);
  }

  void list(String name, List<List<String>> rows) {
    StringBuilder csv = new StringBuilder();
    for (List<String> row : rows) {
      List<String> cells = new ArrayList<>();
      row.forEach(cell -> cells.add(Escapes.csv(cell)));
      csv.append(String.join(",", cells)).append("\r\n");
    }
    if (lists.put(name, csv.toString()) != null) {
      throw new IllegalStateException("two lists of the name " + name);
    }
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
