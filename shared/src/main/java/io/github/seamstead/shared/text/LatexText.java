package io.github.seamstead.shared.text;

import java.util.HashMap;
import java.util.Map;

/** Text as running text of LaTeX. */
final class LatexText {

  /** The characters with a meaning of their own, as LaTeX names them for text. */
  private static final String[][] MARKS = {
    {"\\", "\\textbackslash{}"},
    {"{", "\\{"},
    {"}", "\\}"},
    {"$", "\\$"},
    {"&", "\\&"},
    {"#", "\\#"},
    {"%", "\\%"},
    {"_", "\\_"},
    {"^", "\\textasciicircum{}"},
    {"~", "\\textasciitilde{}"},
    {"<", "\\textless{}"},
    {">", "\\textgreater{}"},
    {"|", "\\textbar{}"},
    {"\"", "\\textquotedbl{}"},
    {"`", "\\textasciigrave{}"},
    {"\u00A0", "~"},
    {"\u202F", "\\,"},
    {"\u2009", "\\,"},
    {"\u2010", "-{}"},
    {"\u2011", "-{}"},
    {"\u2013", "\\textendash{}"},
    {"\u2014", "\\textemdash{}"},
    {"\u2018", "\\textquoteleft{}"},
    {"\u2019", "\\textquoteright{}"},
    {"\u201C", "\\textquotedblleft{}"},
    {"\u201D", "\\textquotedblright{}"},
    {"\u2026", "\\ldots{}"},
    {"\u00B0", "\\textdegree{}"},
    {"\u00D7", "\\texttimes{}"},
    {"\u00F7", "\\textdiv{}"},
    {"\u00B1", "\\textpm{}"},
    {"\u00B7", "\\textperiodcentered{}"},
    {"\u2212", "\\ensuremath{-}"},
    {"\u2022", "\\textbullet{}"},
    {"\u2032", "\\ensuremath{'}"},
    {"\u2033", "\\ensuremath{''}"},
    {"\u00B2", "\\ensuremath{^{2}}"},
    {"\u00B3", "\\ensuremath{^{3}}"},
    {"\u00B5", "\\ensuremath{\\mu}"},
    {"\u00BD", "\\ensuremath{\\frac{1}{2}}"},
    {"\u00BC", "\\ensuremath{\\frac{1}{4}}"},
    {"\u00BE", "\\ensuremath{\\frac{3}{4}}"},
    {"\u221A", "\\ensuremath{\\surd}"},
    {"\u2264", "\\ensuremath{\\le}"},
    {"\u2265", "\\ensuremath{\\ge}"},
    {"\u2260", "\\ensuremath{\\ne}"},
    {"\u2248", "\\ensuremath{\\approx}"},
    {"\u2192", "\\ensuremath{\\rightarrow}"},
    {"\u2030", "\\textperthousand{}"},
    {"\u2220", "\\ensuremath{\\angle}"},
    {"\u22C5", "\\ensuremath{\\cdot}"},
    {"\u2202", "\\ensuremath{\\partial}"},
    {"\u2211", "\\ensuremath{\\sum}"},
    {"\u221E", "\\ensuremath{\\infty}"},
    {"\u20AC", "\\texteuro{}"},
  };

  /** Greek in the order of Unicode from U+0391 and U+03B1; capitals alike Latin ones are those. */
  private static final String[] CAPITALS = {
    "A",
    "B",
    "\\Gamma",
    "\\Delta",
    "E",
    "Z",
    "H",
    "\\Theta",
    "I",
    "K",
    "\\Lambda",
    "M",
    "N",
    "\\Xi",
    "O",
    "\\Pi",
    "P",
    "",
    "\\Sigma",
    "T",
    "\\Upsilon",
    "\\Phi",
    "X",
    "\\Psi",
    "\\Omega"
  };

  private static final String[] SMALL = {
    "\\alpha",
    "\\beta",
    "\\gamma",
    "\\delta",
    "\\varepsilon",
    "\\zeta",
    "\\eta",
    "\\theta",
    "\\iota",
    "\\kappa",
    "\\lambda",
    "\\mu",
    "\\nu",
    "\\xi",
    "o",
    "\\pi",
    "\\rho",
    "\\varsigma",
    "\\sigma",
    "\\tau",
    "\\upsilon",
    "\\varphi",
    "\\chi",
    "\\psi",
    "\\omega"
  };

  private static final String T1 =
      "¡¿£§ĂăĄąĆćČčĎďĐđĚěĘęĞğĹĺĽľŁłŃńŇňŊŋŐőŔŕŘřŚśŠšŞşŤťŢţŰűŮůŸŹźŽžŻżİŒœ";

  private static final Map<Integer, String> TABLE = table();

  private LatexText() {}

  static String of(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 32);
    text.codePoints()
        .forEach(
            c -> {
              String mapped = TABLE.get(c);
              if (mapped != null) {
                safe.append(mapped);
              } else if (Escapes.isBreak(c)) {
                safe.append(' ');
              } else if (isSet(c)) {
                safe.appendCodePoint(c);
              } else if (!Escapes.turnsDirection(c)) {
                safe.append(String.format("[U+%04X]", c));
              }
            });
    return safe.toString();
  }

  /** What the T1 encoding of LaTeX has: ASCII, the letters of Latin-1 and most of the next. */
  private static boolean isSet(int c) {
    return (c >= 0x20 && c < 0x7F) || (c >= 0xC0 && c <= 0xFF && c != 0xD7) || T1.indexOf(c) >= 0;
  }

  private static Map<Integer, String> table() {
    Map<Integer, String> table = new HashMap<>();
    for (String[] mark : MARKS) {
      table.put(mark[0].codePointAt(0), mark[1]);
    }
    greek(table, 0x391, CAPITALS);
    greek(table, 0x3B1, SMALL);
    table.put(0x3D1, "\\ensuremath{\\vartheta}");
    table.put(0x3D5, "\\ensuremath{\\phi}");
    table.put(0x3F5, "\\ensuremath{\\epsilon}");
    return table;
  }

  private static void greek(Map<Integer, String> table, int from, String[] letters) {
    for (int i = 0; i < letters.length; i++) {
      if (!letters[i].isEmpty()) {
        table.put(from + i, "\\ensuremath{" + letters[i] + "}");
      }
    }
  }
}
