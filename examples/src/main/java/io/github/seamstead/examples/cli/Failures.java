package io.github.seamstead.examples.cli;

import io.github.seamstead.api.chapter.Unmet;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.quantity.ImperialText;
import io.github.seamstead.shared.quantity.UnitSystem;
import io.github.seamstead.shared.text.Escapes;
import io.github.seamstead.shared.text.IoReason;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;

/** Turns what a command throws into messages and an exit code. */
final class Failures {

  static final int CANNOT_BE_MET = 1;
  static final int BAD_INPUT = 2;

  private Failures() {}

  /** Prints what a job asks for and cannot be met, in the units of the job as in its book. */
  static void print(JobPlan plan, PrintWriter err) {
    boolean imperial = plan.job().document().units() == UnitSystem.IMPERIAL;
    for (Unmet what : plan.unmet()) {
      // Plain spaces, as a terminal may know no others.
      String told = imperial ? ImperialText.of(what.what()).replace('\u00a0', ' ') : what.what();
      err.println(Escapes.terminal("Cannot be met: " + what.chapter().title() + ": " + told));
    }
  }

  /** Prints what went wrong and gives the exit code. */
  static int report(Exception e, PrintWriter err) {
    if (e instanceof JobFaultsException faults) {
      int count = faults.faults().size();
      err.println(
          count == 1 ? "1 fault; nothing was written:" : count + " faults; nothing was written:");
      for (JobFault fault : faults.faults()) {
        err.println("  " + fault.text());
      }
      return BAD_INPUT;
    }
    if (e instanceof InvalidPathException path) {
      err.println(
          Escapes.terminal(
              "\""
                  + path.getInput()
                  + "\" cannot be the name of a file here: "
                  + path.getReason()
                  + "; use other letters, or set a UTF-8 locale"));
      return BAD_INPUT;
    }
    if (e instanceof ArgumentFault || e instanceof UncheckedIOException) {
      err.println(Escapes.terminal(String.valueOf(e.getMessage())));
      return BAD_INPUT;
    }
    if (e instanceof IOException failure) {
      err.println("a file could not be read or written: " + IoReason.of(failure));
      return BAD_INPUT;
    }
    err.println("seamstead failed, which is a defect of the program: " + e);
    e.printStackTrace(err);
    return CANNOT_BE_MET;
  }
}
