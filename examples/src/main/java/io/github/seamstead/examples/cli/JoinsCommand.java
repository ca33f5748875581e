package io.github.seamstead.examples.cli;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.job.JoinLogReader;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.assembly.merge.HandledMass;
import io.github.seamstead.assembly.merge.JoinPlanner;
import io.github.seamstead.assembly.merge.JoinStep;
import io.github.seamstead.assembly.merge.Limits;
import io.github.seamstead.assembly.merge.MergePlan;
import io.github.seamstead.assembly.merge.PlanResult;
import io.github.seamstead.assembly.ring.JoinLog;
import io.github.seamstead.assembly.ring.LogEntry;
import io.github.seamstead.assembly.ring.LogReport;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.assembly.ring.Relabelling;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.quantity.Numbers;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints the join order, or checks what was joined so far and plans on from there. */
@Command(
    name = "joins",
    mixinStandardHelpOptions = true,
    description = "Prints the join order of a job, or checks a log of seams and plans on from it.")
final class JoinsCommand implements Callable<Integer> {

  private final Console console;

  @Parameters(index = "0", paramLabel = "FILE.json", description = "The job document.")
  private Path file = Path.of("");

  @Option(
      names = "--log",
      paramLabel = "LOG.json",
      description =
          "What was joined so far: {\"seamstead\": 1, \"log\": [{\"join\": [\"3R\", \"4L\"]}]}.")
  private Optional<Path> log = Optional.empty();

  @Option(names = "--worked", description = "Print the worked sum of the handled mass as well.")
  private boolean worked;

  JoinsCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    List<LogEntry> entries = log.map(JoinLogReader::read).orElse(List.of());
    JobPlan plan =
        JobPlanner.plan(JobInput.read(file), PlanOptions.defaults().only(Chapter.JOINING));
    Failures.print(plan, console.err());
    JoiningPart joining =
        plan.joining()
            .orElseThrow(() -> ArgumentFault.finding("joins: the document has no cover to join"));
    PieceRing ring = joining.ring();
    console.out().println(ring.count().text());
    if (log.isEmpty()) {
      return order(new PlanResult(joining.order(), "no order keeps the limits"));
    }
    LogReport report = JoinLog.verify(ring, entries);
    boolean clean = report(ring, report);
    int code = report.isComplete() ? 0 : order(rest(joining, report));
    return clean ? code : Failures.CANNOT_BE_MET;
  }

  /** The rest within the limits; if no order keeps them, groups are dragged instead of carried. */
  private static PlanResult rest(JoiningPart joining, LogReport report) {
    PlanResult within = JoinPlanner.replan(joining.ring(), report, joining.options());
    return within.plan().isPresent()
        ? within
        : JoinPlanner.replan(joining.ring(), report, joining.options().with(Limits.NONE));
  }

  private boolean report(PieceRing ring, LogReport report) {
    PrintWriter print = console.out();
    if (report.isClean()) {
      print.println("The log has no fault.");
    }
    report
        .faults()
        .forEach(
            f ->
                print.println("Entry " + f.entry() + ", " + f.kind().label() + ": " + f.message()));
    report.undo().forEach(seam -> print.println("Undo " + seam.text()));
    if (!report.isClean()) {
      print.println(report.proof());
      Relabelling.of(ring, report)
          .ifPresent(
              r ->
                  print.println(
                      "Or undo "
                          + r.undo().size()
                          + " and rename the pieces (piece to place): "
                          + r.newNames()));
    }
    int kept = report.kept().size();
    int open = report.open().size();
    print.println(
        (kept == 1 ? "1 joint stands, " : kept + " joints stand, ")
            + (open == 1 ? "1 is open." : open + " are open."));
    return report.isClean();
  }

  private int order(PlanResult result) {
    PrintWriter print = console.out();
    if (result.plan().isEmpty()) {
      console.err().println("Cannot be met: " + result.reason());
      return Failures.CANNOT_BE_MET;
    }
    MergePlan plan = result.plan().get();
    print.println("Join in this order:");
    for (JoinStep step : plan.steps()) {
      print.println(
          "  "
              + step.number()
              + ". team "
              + step.team()
              + ": "
              + step.joint().text()
              + ", "
              + Numbers.fixed(step.massInHand(), 1)
              + " kg in hand"
              + (step.closing() ? ", closes the ring" : ""));
    }
    print.println("Handled mass " + Numbers.fixed(plan.cost().handledMass(), 1) + " kg.");
    if (worked) {
      StepRecorder steps = new StepRecorder();
      HandledMass.of(plan, steps);
      WorkedText.print(steps.derivation("assembly.merge.handledmass", "The handled mass"), print);
    }
    return 0;
  }
}
