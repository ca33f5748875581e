package io.github.seamstead.api.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

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
    write(to, text -> Optional.empty());
  }

  /**
   * Writes the table with links from its cells.
   *
   * @param to where to
   * @param links the id to which a cell's text leads; empty for no link
   */
  public void write(Markup to, Function<String, Optional<String>> links) {
    String kind = rows.size() > SHORT ? "scroll" : "scroll short";
    to.open("div", "class", kind, "tabindex", "0", "role", "region", "aria-label", caption);
    to.open("table").element("caption", caption).open("thead").open("tr");
    for (int i = 0; i < columns.size(); i++) {
      to.element("th", columns.get(i), "scope", "col", "class", numeric[i] ? "n" : "t");
    }
    to.close().close().open("tbody");
    for (List<String> row : rows) {
      to.open("tr");
      for (int i = 0; i < row.size(); i++) {
        String text = row.get(i);
        String kindOf = numeric[i] ? "n" : "t";
        links
            .apply(text)
            .ifPresentOrElse(
                id -> to.open("td", "class", kindOf).element("a", text, "href", "#" + id).close(),
                () -> to.element("td", text, "class", kindOf));
      }
      to.closeLine();
    }
    to.close().close().closeLine();
  }
}
