package io.github.seamstead.api.chapter.internal;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.ChapterCaution;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.page.Table;
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
public final class BookContext {

  private final Parts parts;
  private final List<ChapterCaution> cautions;
  private final Words words;
  private final Page page;
  private final Map<String, Drawing> drawings = new LinkedHashMap<>();
  private final Map<String, String> lists = new LinkedHashMap<>();
  private Markup body = new Markup();

  public BookContext(Parts parts, List<ChapterCaution> cautions, Words words, Page page) {
    this.parts = parts;
    this.cautions = List.copyOf(cautions);
    this.words = words;
    this.page = page;
  }

  /** What the chapters found. */
  public Parts parts() {
    return parts;
  }

  public Words words() {
    return words;
  }

  /** The body of the chapter that is being written. */
  public Markup body() {
    return body;
  }

  public Map<String, Drawing> drawings() {
    return drawings;
  }

  /** CSV lists by file name. */
  public Map<String, String> lists() {
    return lists;
  }

  /** Ends a chapter: its cautions come last, so that they are read with the result. */
  public void end(Chapter chapter) {
    for (ChapterCaution caution : cautions) {
      if (caution.chapter() == chapter) {
        caution(caution.caution());
      }
    }
    end(chapter.title());
  }

  public void end(String title) {
    page.chapter(title, body);
    body = new Markup();
  }

  public void heading(String title) {
    body.element("h3", title).raw("\n");
  }

  public void paragraph(String text) {
    body.element("p", text).raw("\n");
  }

  public void note(String text) {
    body.element("p", text, "class", "note").raw("\n");
  }

  public void table(Table table) {
    if (!table.isEmpty()) {
      table.write(body);
    }
  }

  /** Shows a drawing in the chapter and keeps it as a file. */
  public void figure(Drawing drawing) {
    keep(drawing);
    body.open("figure").raw(drawing.inline());
    body.element("figcaption", drawing.title() + ". " + drawing.description()).closeLine();
  }

  /** Keeps a drawing as a file alone. */
  public void keep(Drawing drawing) {
    drawings.put(drawing.name(), drawing);
  }

  public void list(String name, List<List<String>> rows) {
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
  public static String millimetres(double metres) {
    return Numbers.fixed(metres * 1000, 1) + "\u00a0mm";
  }

  public static String number(double value, int decimals) {
    return Numbers.fixed(value, decimals);
  }
}
