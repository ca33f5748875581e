package io.github.seamstead.api.page;

import java.util.ArrayList;
import java.util.List;

/** A table that scrolls inside its own box on a narrow screen. Not thread-safe. */
public final class Table {

  /** A table of no more rows than this is kept on one sheet of paper. */
  private static final int SHORT = 16;

  private final String caption;
  private final List<String> columns;
  private final boolean[] numeric;
  private final List<List<String>> rows = new ArrayList<>();

  /**
   * Starts a table.
   *
   * @param caption what it shows
   * @param columns the headings; a heading that starts with {@code #} is of a column of numbers,
   *     which is set flush right, and is shown without that mark
   */
  public Table(String caption, String... columns) {
    this.caption = caption;
    this.columns = new ArrayList<>();
    this.numeric = new boolean[columns.length];
    for (int i = 0; i < columns.length; i++) {
      numeric[i] = columns[i].startsWith("#");
      this.columns.add(numeric[i] ? columns[i].substring(1) : columns[i]);
    }
  }

  /**
   * Adds a row.
   *
   * @param cells as many texts as there are columns
   * @return this table
   * @throws IllegalArgumentException if the count differs
   */
  public Table row(String... cells) {
    if (cells.length != columns.size()) {
      throw new IllegalArgumentException(
          caption + ": given " + cells.length + " cells, must be " + columns.size());
    }
    rows.add(List.of(cells));
    return this;
  }

  /**
   * Tells whether the table has no row.
   *
   * @return true before the first row
   */
  public boolean isEmpty() {
    return rows.isEmpty();
  }

  /**
   * Writes the table.
   *
   * @param to where to
   */
  public void write(Markup to) {
    String kind = rows.size() > SHORT ? "scroll" : "scroll short";
    to.open("div", "class", kind, "tabindex", "0", "role", "region", "aria-label", caption);
    to.open("table").element("caption", caption).open("thead").open("tr");
    for (int i = 0; i < columns.size(); i++) {
      cell(to, "th", i, columns.get(i));
    }
    to.close().close().open("tbody");
    for (List<String> row : rows) {
      to.open("tr");
      for (int i = 0; i < row.size(); i++) {
        cell(to, "td", i, row.get(i));
      }
      to.closeLine();
    }
    to.close().close().closeLine();
  }

  private void cell(Markup to, String tag, int column, String text) {
    if (tag.equals("th")) {
      to.element(tag, text, "scope", "col", "class", numeric[column] ? "n" : "t");
    } else {
      to.element(tag, text, "class", numeric[column] ? "n" : "t");
    }
  }
}
