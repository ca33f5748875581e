package io.github.seamstead.examples.fuzz;

import io.github.seamstead.api.book.Book;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.List;

/** Runs a case and tells what is wrong with its outcome. Not thread-safe. */
final class FuzzOracle {

  private static final int MOST_FAULTS = 200;
  private static final int LONGEST_FAULT = 1200;

  private final ResultRules rules = new ResultRules();

  /**
   * What came of a case.
   *
   * @param accepted whether a plan was made
   * @param wrong what is wrong; empty if nothing is
   */
  record Outcome(boolean accepted, List<String> wrong) {}

  Outcome run(FuzzCase one, boolean withBook, Cancellation cancellation) {
    List<String> wrong = new ArrayList<>();
    try {
      Job job = JobReader.parse(one.text());
      JobPlan plan = JobPlanner.plan(job, PlanOptions.defaults().stoppedBy(cancellation));
      if (!cancellation.isCancelled()) {
        accepted(plan, withBook, wrong);
      }
      return new Outcome(true, wrong);
    } catch (JobFaultsException e) {
      refused(e, wrong);
      return new Outcome(false, wrong);
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
      wrong.add(crash(e));
      return new Outcome(false, wrong);
    }
  }

  private static String crash(Throwable e) {
    StringBuilder text = new StringBuilder("not a documented exception: " + e);
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      for (StackTraceElement at : cause.getStackTrace()) {
        if (at.getClassName().startsWith("io.github.seamstead")) {
          text.append(" at ").append(at);
          break;
        }
      }
    }
    return text.toString();
  }

  private static void refused(JobFaultsException e, List<String> wrong) {
    if (e.faults().isEmpty() || e.faults().size() > MOST_FAULTS + 50) {
      wrong.add(e.faults().size() + " faults");
    }
    for (JobFault fault : e.faults()) {
      String text = fault.text();
      if (!fault.path().startsWith("$") || text.length() > LONGEST_FAULT) {
        wrong.add("a fault that nobody reads: " + text.substring(0, Math.min(300, text.length())));
      }
      if (text.chars().anyMatch(c -> c < ' ' || c == 0x7f || c == 0x202e)) {
        wrong.add("a fault that steers the terminal: " + text);
      }
      // What the JSON reader says names the literals of its notation.
      if (!fault.allowed().startsWith("the reader says")) {
        ResultRules.words("allowed", fault.allowed(), wrong);
      }
    }
  }

  private void accepted(JobPlan plan, boolean withBook, List<String> wrong) {
    rules.check(ResultsJson.text(plan), wrong);
    PlanSums.check(plan, wrong);
    if (withBook) {
      Book book = Book.of(plan);
      String html = book.html().replaceAll("(?s)<(svg|script|style)\\b.*?</\\1>", "");
      ResultRules.words("book", html.replaceAll("<[^>]*>", " "), wrong);
      book.lists().forEach((name, text) -> ResultRules.words(name, text, wrong));
      book.drawings()
          .forEach(
              (name, drawing) -> {
                if (drawing.contains("NaN") || drawing.contains("Infinity")) {
                  wrong.add("drawing " + name + " has numbers that are none");
                }
              });
    }
  }
}
