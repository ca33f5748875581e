package io.github.seamstead.examples.cli;

import io.github.seamstead.api.chapter.Unmet;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;

/** Turns what a command throws into messages and an exit code. */
final class Failures {

  static final int CANNOT_BE_MET = 1;
  static final int BAD_INPUT = 2;

  private Failures() {}

  /** Prints what the job asks for and cannot be met. */
  static void print(List<Unmet> unmet, PrintWriter err) {
    for (Unmet what : unmet) {
      err.println("Cannot be met: " + what.chapter().title() + ": " + what.what());
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
    if (e instanceof IllegalArgumentException || e instanceof UncheckedIOException) {
      err.println(e.getMessage());
      return BAD_INPUT;
    }
    err.println("seamstead failed, which is a defect of the program: " + e);
    e.printStackTrace(err);
    return CANNOT_BE_MET;
  }
}
