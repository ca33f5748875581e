package io.github.seamstead.api.page;

/** The fills of all drawings: light greys and hatches that a black-and-white print keeps apart. */
public enum Shade {
  /** No fill. */
  NONE("none"),
  /** Paper white, to cover what lies below. */
  PAPER("#fff"),
  /** Very light grey. */
  PALE("#f0f0ec"),
  /** Light grey. */
  LIGHT("#dcdcd4"),
  /** Middle grey; black text on it keeps a contrast above 4.5 to 1. */
  MIDDLE("#b8b8ae"),
  /** Sloping lines. */
  HATCH("url(#hatch)"),
  /** Dots. */
  DOTS("url(#dots)");

  private final String paint;

  Shade(String paint) {
    this.paint = paint;
  }

  String paint() {
    return paint;
  }
}
