package io.github.seamstead.examples.cli;

import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Step;
import io.github.seamstead.shared.derivation.Typeset;
import io.github.seamstead.shared.text.Escapes;
import java.io.PrintWriter;

/** Worked steps as plain text. */
final class WorkedText {

  private WorkedText() {}

  static void print(Derivation derivation, PrintWriter print) {
    print.println();
    print.println(Escapes.terminal(derivation.title()) + ", worked:");
    String section = "";
    for (Step step : derivation.steps()) {
      if (!step.section().equals(section)) {
        section = step.section();
        print.println("  " + Escapes.terminal(section));
      }
      print.println(Escapes.terminal("    " + step.name() + ": " + Typeset.plain(step)));
      step.source().ifPresent(source -> print.println("      " + source.citation()));
      if (!step.note().isEmpty()) {
        print.println("      " + Escapes.terminal(step.note()));
      }
    }
  }
}
