package io.github.seamstead.api.book.front;

import io.github.seamstead.api.page.Markup;

/**
 * One sheet or card of the front.
 *
 * @param title its heading
 * @param anchor the id of its heading, unique in the page
 * @param part the group it belongs to, such as {@code Day 3} or {@code Piece card}
 * @param kind how it takes its place on paper
 * @param body the markup below the heading
 */
record Sheet(String title, String anchor, String part, Kind kind, Markup body) {

  /** How a sheet takes its place on paper. */
  enum Kind {
    /** It starts a page. */
    PAGE("page"),
    /** It lies across a page of its own. */
    WIDE("wide"),
    /** It shares pages with what comes before and after, and is never cut. */
    CARD("half");

    private final String style;

    Kind(String style) {
      this.style = style;
    }

    String style() {
      return style;
    }
  }
}
