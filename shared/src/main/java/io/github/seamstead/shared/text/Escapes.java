package io.github.seamstead.shared.text;

import java.util.Map;

/**
 * Makes a text that a person wrote harmless for where it goes: it is shown as text there and is
 * neither run, nor read as markup, nor able to change what stands round it. All methods are pure,
 * take any text, and cost time linear in it.
 */
public final class Escapes {

  private static final char ISOLATE = '\u2068';
  private static final char END_ISOLATE = '\u2069';

  private static final Map<Integer, String> XML =
      Map.of((int) '&', "&amp;", (int) '<', "&lt;", (int) '>', "&gt;", (int) '"', "&quot;");

  /** Marks that mean something anywhere in a line of Markdown; CommonMark lets each be escaped. */
  private static final String MARKDOWN = "\\`*_[]<>~|!$^";

  /** Marks that mean something at the start of a line. */
  private static final String MARKDOWN_START = "#+-=";

  private Escapes() {}

  /**
   * Makes a text safe for a terminal or a log: it stays on its line, in its direction, and moves no
   * cursor.
   *
   * @param text any text
   * @return the text with control characters, line ends, marks of writing direction, invisible
   *     characters and unpaired surrogates as their code, a backslash and {@code uXXXX}
   */
  public static String terminal(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    text.codePoints()
        .forEach(
            c -> {
              if (isHidden(c)) {
                for (char unit : Character.toChars(c)) {
                  safe.append(String.format("\\u%04X", (int) unit));
                }
              } else {
                safe.appendCodePoint(c);
              }
            });
    return safe.toString();
  }

  /**
   * Makes a text safe for the content and the quoted attributes of HTML, SVG and XML.
   *
   * @param text any text
   * @return the text escaped. Characters that XML 1.0 forbids (section 2.2: most controls, unpaired
   *     surrogates, U+FFFE, U+FFFF) and marks that turn the writing direction of what follows are
   *     left out; words in a script written from right to left are set apart by isolates (U+2068,
   *     U+2069), so that they do not turn the rest of their line round
   */
  public static String xml(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    int[] codes = text.codePoints().filter(c -> isXml(c) && !turnsDirection(c)).toArray();
    int end = -1;
    for (int i = 0; i < codes.length; i++) {
      if (end < 0 && Direction.isRightToLeft(codes[i])) {
        end = lastOfRun(codes, i);
        safe.append(ISOLATE);
      }
      String escaped = XML.get(codes[i]);
      if (escaped == null) {
        safe.appendCodePoint(codes[i]);
      } else {
        safe.append(escaped);
      }
      if (i == end) {
        safe.append(END_ISOLATE);
        end = -1;
      }
    }
    return safe.toString();
  }

  /** The last letter written from right to left before one that is written the other way. */
  private static int lastOfRun(int[] codes, int from) {
    int last = from;
    for (int i = from; i < codes.length; i++) {
      if (Direction.isRightToLeft(codes[i])) {
        last = i;
      } else if (Direction.isLeftToRight(codes[i])) {
        return last;
      }
    }
    return last;
  }

  /**
   * Makes a text safe for a line of Markdown.
   *
   * @param text any text
   * @return the text on one line, with every mark that may be markup escaped by a backslash
   */
  public static String markdown(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    String line = oneLine(text);
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (MARKDOWN.indexOf(c) >= 0 || isMarkdownHere(line, i)) {
        safe.append('\\');
      }
      safe.append(c);
    }
    return safe.toString();
  }

  private static boolean isMarkdownHere(String line, int i) {
    char c = line.charAt(i);
    String before = line.substring(0, i);
    return (c == '&' && line.substring(i).matches("(?s)&[#A-Za-z].*"))
        || (c == ':' && line.startsWith("//", i + 1))
        || (MARKDOWN_START.indexOf(c) >= 0 && before.isBlank())
        || ((c == '.' || c == ')') && before.strip().matches("\\d+"));
  }

  private static String oneLine(String text) {
    StringBuilder line = new StringBuilder(text.length());
    text.codePoints()
        .map(c -> isBreak(c) ? ' ' : c)
        .filter(c -> isXml(c) && !turnsDirection(c))
        .forEach(line::appendCodePoint);
    return line.toString();
  }

  /**
   * Makes a text safe for a code span of Markdown between single backticks.
   *
   * @param text any text
   * @return the text on one line with U+02CB in place of backticks, which no escape reaches there
   */
  public static String markdownCode(String text) {
    return oneLine(text).replace('`', '\u02CB');
  }

  /**
   * Makes a text safe for running text of LaTeX: no command, no group, no mathematics is left in
   * it, and every character is one that pdfTeX sets.
   *
   * @param text any text
   * @return the text escaped on one line; a character that the base fonts lack becomes its code
   *     point, such as {@code [U+6C34]}
   */
  public static String latex(String text) {
    return LatexText.of(text);
  }

  /**
   * Makes a cell of comma-separated values (RFC 4180) that a spreadsheet reads as text or as a
   * number, never as a formula.
   *
   * @param text any text
   * @return the cell, quoted where it needs it; one that starts like a formula and is no plain
   *     number is led by an apostrophe
   */
  public static String csv(String text) {
    StringBuilder clean = new StringBuilder(text.length() + 8);
    text.codePoints().filter(c -> isXml(c) && !turnsDirection(c)).forEach(clean::appendCodePoint);
    String safe = startsFormula(clean) ? "'" + clean : clean.toString();
    boolean quoted = safe.chars().anyMatch(c -> c == '"' || c == ',' || c == ';' || isBreak(c));
    return quoted || !safe.equals(safe.strip()) ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
  }

  /** Spreadsheets pass over leading blanks, and some take a fullwidth sign for the plain one. */
  private static boolean startsFormula(CharSequence text) {
    String rest = text.toString().strip();
    if (rest.isEmpty()) {
      return false;
    }
    char first = text.charAt(0);
    if (first == '\t' || first == '\r' || first == '\n') {
      return true;
    }
    return "=+-@|%\uFF1D\uFF0B\uFF0D\uFF20\u2212".indexOf(rest.charAt(0)) >= 0
        && !rest.matches("[-+\u2212]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d+)?");
  }

  /** Whether a code point ends a line somewhere. */
  static boolean isBreak(int c) {
    return c == '\n'
        || c == '\r'
        || c == '\t'
        || c == 0x0B
        || c == 0x0C
        || c == 0x85
        || c == 0x2028
        || c == 0x2029;
  }

  /** Whether XML 1.0 admits a code point (section 2.2, Char). */
  static boolean isXml(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || (c >= 0x20 && c < 0x7F)
        || (c >= 0xA0 && c <= 0xD7FF)
        || c == 0x85
        || (c >= 0xE000 && c <= 0xFFFD)
        || (c >= 0x10000 && c <= 0x10FFFF && (c & 0xFFFE) != 0xFFFE);
  }

  /**
   * Whether a code point is an explicit mark of writing direction (Unicode Standard Annex 9,
   * section 2): embeddings, overrides, isolates. The marks of one letter's width are kept by pages.
   */
  static boolean turnsDirection(int c) {
    return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
  }

  private static boolean isHidden(int c) {
    int type = Character.getType(c);
    return type == Character.CONTROL
        || type == Character.FORMAT
        || type == Character.SURROGATE
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || (c & 0xFFFE) == 0xFFFE;
  }
}
