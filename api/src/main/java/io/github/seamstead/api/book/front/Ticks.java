package io.github.seamstead.api.book.front;

import io.github.seamstead.api.page.Markup;

/** Writes boxes to tick and blanks to fill: native fields, so that they work without a script. */
final class Ticks {

  private Ticks() {}

  /** Writes a box with its label as one target. */
  static void box(Markup to, String key, String label) {
    to.open("label", "class", "tk");
    to.open("input", "type", "checkbox", "data-k", key);
    to.element("span", label).close();
  }

  /** Writes a box alone; its name is spoken and not shown. */
  static void bare(Markup to, String key, String spoken) {
    to.open("label", "class", "hit");
    to.open("input", "type", "checkbox", "data-k", key, "aria-label", spoken).close();
  }

  /** Writes a blank for what is measured, or for a time and initials. */
  static void blank(Markup to, String key, String spoken) {
    to.open(
        "input",
        "class",
        "blank",
        "type",
        "text",
        "size",
        "6",
        "autocomplete",
        "off",
        "data-k",
        key,
        "aria-label",
        spoken);
  }

  /** Writes a blank for a number. */
  static void number(Markup to, String key, String spoken) {
    to.open(
        "input",
        "class",
        "blank",
        "type",
        "text",
        "inputmode",
        "decimal",
        "size",
        "6",
        "autocomplete",
        "off",
        "data-k",
        key,
        "aria-label",
        spoken);
  }

  /** Starts a table that scrolls on a phone. */
  static void table(Markup to, String spoken, String... columns) {
    to.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", spoken);
    to.open("table", "class", "names").open("thead").open("tr");
    for (String column : columns) {
      boolean number = column.startsWith("#");
      to.element(
          "th", number ? column.substring(1) : column, "scope", "col", "class", number ? "n" : "t");
    }
    to.close().close().open("tbody");
  }

  static void endTable(Markup to) {
    to.close().close().closeLine();
  }

  static void cells(Markup to, String... cells) {
    for (String cell : cells) {
      boolean number = cell.startsWith("#");
      to.element("td", number ? cell.substring(1) : cell, "class", number ? "n" : "t");
    }
  }
}
