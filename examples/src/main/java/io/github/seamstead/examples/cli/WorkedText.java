package io.github.seamstead.examples.cli;

import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Step;
import io.github.seamstead.shared.derivation.Typeset;
import java.io.PrintWriter;

/** Worked steps as plain text. */
final class WorkedText {

  private WorkedText() {}

  static void print(Derivation derivation, PrintWriter print) {
    print.println();
    print.println(derivation.title() + ", worked:");
    String section = "";
    for (Step step : derivation.steps()) {
      if (!step.section().equals(section)) {
        section = step.section();
        print.println("  " + section);
      }
      print.println("    " + step.name() + ": " + Typeset.plain(step));
      step.source().ifPresent(source -> print.println("      " + source.citation()));
      if (!step.note().isEmpty()) {
        print.println("      " + step.note());
      }
    }
  }
}
