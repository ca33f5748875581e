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

  /** Writes all derivations as one LaTeX document that needs amsmath and nothing else. */
  static String latex(List<Derivation> derivations) {
    StringBuilder text = new StringBuilder();
    text.append("\\documentclass{article}\n\\usepackage{amsmath}\n\\begin{document}\n");
    derivations.forEach(d -> text.append(Typeset.latex(d)).append('\n'));
    return text.append("\\end{document}\n").toString();
  }
}
