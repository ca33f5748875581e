package io.github.seamstead.api.chapter.internal;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.ChapterCaution;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.page.Anchors;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.LinkedNumbers;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.text.Escapes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What the chapters share while a book is written: the plan, its words, and the page, drawings and
 * lists as they grow. Not thread-safe.
 */
public final class BookContext {

  private final Parts parts;
  private final List<ChapterCaution> cautions;
  private final Words words;
  private final Page page;
  private final int doorFace;
  private final Map<String, Drawing> drawings = new LinkedHashMap<>();
  private final Map<String, String> lists = new LinkedHashMap<>();
  private final Anchors names = new Anchors();
  private Markup body = new Markup();
  private Function<String, Optional<String>> sums = text -> Optional.empty();

  public BookContext(
      Parts parts, List<ChapterCaution> cautions, Words words, Page page, int doorFace) {
    this.parts = parts;
    this.cautions = List.copyOf(cautions);
    this.words = words;
    this.page = page;
    this.doorFace = doorFace;
  }

  /** The face that is drawn at the bottom of every plan. */
  public int doorFace() {
    return doorFace;
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

  /** From here on numbers of tables and of running text lead to the sums from which they come. */
  public void linkNumbers(Function<String, Optional<String>> toSums) {
    sums = toSums;
  }

  public void heading(String title) {
    body.element("h3", title).raw("\n");
  }

  public void paragraph(String text) {
    LinkedNumbers.write(body.open("p"), words.said(text), sums).closeLine();
  }

  public void note(String text) {
    LinkedNumbers.write(body.open("p", "class", "note"), words.said(text), sums).closeLine();
  }

  public void table(Table table) {
    if (!table.isEmpty()) {
      table.write(body, sums);
    }
  }

  /** Shows a drawing in the chapter and keeps it as a file. */
  public void figure(Drawing drawing) {
    body.open("figure").raw(keep(drawing).inline());
    body.element("figcaption", drawing.title() + ". " + drawing.description()).closeLine();
  }

  /** Keeps a drawing as a file, under a name that no other of the book has, and gives it so. */
  public Drawing keep(Drawing drawing) {
    Drawing named = drawing.named(names.unique(drawing.name()));
    drawings.put(named.name(), named);
    return named;
  }

  /** Lists the drawings: a file's name is plain and short, what it shows has its own name here. */
  public void listDrawings() {
    if (drawings.isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("file", "drawing"));
    drawings.values().forEach(d -> rows.add(List.of("drawings/" + d.name() + ".svg", d.title())));
    list("drawings.csv", rows);
  }

  public void list(String name, List<List<String>> rows) {
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
    body.text(words.said(caution.text())).close();
    body.closeLine();
  }

  public static String number(double value, int decimals) {
    return Numbers.fixed(value, decimals);
  }
}
