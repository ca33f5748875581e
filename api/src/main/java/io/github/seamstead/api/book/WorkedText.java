package io.github.seamstead.api.book;

import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Typeset;
import java.util.List;

/** The worked steps as text files, for slides and exercise sheets. */
final class WorkedText {

  private WorkedText() {}

  /** Writes all derivations as one Markdown text. */
  static String markdown(List<Derivation> derivations) {
    StringBuilder text = new StringBuilder("# The sums, worked\n\n");
    derivations.forEach(d -> text.append(Typeset.markdown(d)).append('\n'));
    return text.toString();
  }

  /**
   * A sum that is wider than the text is scaled down: few break well by rule. Raised and lowered
   * letters are larger than usual, so that they can still be read then.
   */
  private static final String PREAMBLE =
      """
      \\documentclass{article}
      \\usepackage[utf8]{inputenc}
      \\usepackage[T1]{fontenc}
      \\usepackage{textcomp}
      \\usepackage{amsmath}
      \\usepackage{graphicx}
      \\usepackage[a4paper,margin=20mm]{geometry}
      \\DeclareMathSizes{10}{10}{8}{7}
      \\setlength{\\parindent}{0pt}
      \\setlength{\\parskip}{1ex}
      \\newsavebox{\\sumbox}
      \\newcommand{\\fitted}[1]{\\sbox{\\sumbox}{$\\displaystyle #1$}%
        \\ifdim\\wd\\sumbox>\\linewidth\\resizebox{\\linewidth}{!}{\\usebox{\\sumbox}}%
        \\else\\usebox{\\sumbox}\\fi}
      \\begin{document}
      \\raggedright
      """;

  /** Writes all derivations as one LaTeX document that needs the base packages and nothing else. */
  static String latex(List<Derivation> derivations) {
    StringBuilder text = new StringBuilder(PREAMBLE);
    derivations.forEach(d -> text.append(Typeset.latex(d)).append('\n'));
    return text.append("\\end{document}\n").toString();
  }
}
