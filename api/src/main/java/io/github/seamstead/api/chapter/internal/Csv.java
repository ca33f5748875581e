package io.github.seamstead.api.chapter.internal;

/** Comma-separated values as RFC 4180 has them. */
public final class Csv {

  private Csv() {}

  /** Quotes a cell where it needs it; a text that a spreadsheet would run is made plain text. */
  public static String cell(String text) {
    String safe = text;
    if (!text.isEmpty() && "=+@\t\r".indexOf(text.charAt(0)) >= 0) {
      safe = "'" + text;
    }
    return safe.matches("(?s).*[\",\r\n].*") ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
  }
}
