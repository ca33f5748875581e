package io.github.seamstead.api.chapter.joining;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.Crew;
import io.github.seamstead.api.job.Joining;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.assembly.fixings.SeamBill;
import io.github.seamstead.assembly.fixings.SeamKind;
import io.github.seamstead.assembly.fixings.SeamRun;
import io.github.seamstead.assembly.fixings.SeamsLeft;
import io.github.seamstead.assembly.handling.LiftLimit;
import io.github.seamstead.assembly.handling.LiftTask;
import io.github.seamstead.assembly.merge.HandledMass;
import io.github.seamstead.assembly.merge.JoinPlanner;
import io.github.seamstead.assembly.merge.JoinTimes;
import io.github.seamstead.assembly.merge.Limits;
import io.github.seamstead.assembly.merge.Objective;
import io.github.seamstead.assembly.merge.PlanResult;
import io.github.seamstead.assembly.merge.TeamLift;
import io.github.seamstead.assembly.ring.JoinLog;
import io.github.seamstead.assembly.ring.JointMap;
import io.github.seamstead.assembly.ring.JointMark;
import io.github.seamstead.assembly.ring.Load;
import io.github.seamstead.assembly.ring.LogEntry;
import io.github.seamstead.assembly.ring.LogReport;
import io.github.seamstead.assembly.ring.Piece;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.assembly.ring.Relabelling;
import io.github.seamstead.assembly.ring.View;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.SeamMatch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Names the joints and plans the order in which panels are joined. */
final class JoiningPlanner {

  private JoiningPlanner() {}

  static Optional<JoiningPart> plan(Run run, CoverPart cover) {
    Cover stated = run.document().cover().orElseThrow();
    return run.attempt("$.cover", () -> ring(cover, stated))
        .flatMap(ring -> run.attempt("$.cover.joining", () -> part(run, cover, ring, stated)));
  }

  private static PieceRing ring(CoverPart cover, Cover stated) {
    List<Piece> pieces = new ArrayList<>();
    List<Double> joints = new ArrayList<>();
    Map<PatternPiece, String> shapes = new HashMap<>();
    for (CutShape shape : cover.cuts()) {
      shape.pieces().forEach(piece -> shapes.put(piece, shape.id()));
    }
    for (int i = 0; i < cover.panels().size(); i++) {
      Panel panel = cover.panels().get(i);
      double mass = panel.clothArea() * stated.fabric().massPerArea();
      double bulk = panel.clothArea() * stated.fabric().thickness();
      Load load = new Load(mass, bulk, 0, panel.clothArea());
      pieces.add(Piece.of(cover.names().get(i), load).cutBy(template(panel, shapes)));
      joints.add(panel.face().edgeLength(panel.rightHip()));
    }
    return PieceRing.ring(pieces, joints);
  }

  /** The shapes that a panel is cut by: panels of the same shapes may take each other's place. */
  private static String template(Panel panel, Map<PatternPiece, String> shapes) {
    return panel.pieces().stream()
        .flatMap(piece -> Optional.ofNullable(shapes.get(piece)).stream())
        .collect(Collectors.joining(" + "));
  }

  private static JoiningPart part(Run run, CoverPart cover, PieceRing ring, Cover stated) {
    Optional<TeamLift> lift = lift(run, stated);
    io.github.seamstead.assembly.merge.PlanOptions options = options(run, stated, lift);
    List<LogEntry> log = run.done().seams();
    Optional<LogReport> report =
        log.isEmpty() ? Optional.empty() : Optional.of(JoinLog.verify(ring, log));
    report.ifPresent(r -> wrong(run, r));
    PlanResult result =
        report.isPresent() ? rest(ring, report.get(), options) : order(ring, options);
    result.plan().ifPresent(plan -> run.cautions(Chapter.JOINING, plan.cautions()));
    lift.ifPresent(team -> run.caution(Chapter.JOINING, team.caution()));
    result
        .plan()
        .ifPresent(
            plan ->
                run.worked(
                    "assembly.merge.handledmass",
                    "The mass handled over all joints",
                    steps -> HandledMass.of(plan, steps)));
    String first = ring.joints().get(0).mark().name();
    run.worked(
        "assembly.ring.check",
        "The check behind the joint's name " + first,
        steps -> JointMark.check(first, steps));
    SeamBill seams = SeamPlanner.bill(cover, stated, ring);
    run.worked("assembly.fixings.seams", "Length of all seams", seams::length);
    double pace =
        stated.joining().map(Joining::usualSeam).orElse(JoinTimes.commonPractice().time(1, 0))
            * ring.joints().size()
            / seams.length(SeamKind.RING);
    return new JoiningPart(
        ring,
        meetings(cover.panels()),
        seams,
        left(run, cover, seams, report),
        pace,
        JointMap.of(ring, View.AS_IT_STANDS),
        JointMap.of(ring, View.AS_IT_LIES),
        result.plan(),
        lift,
        JoinPlanner.compare(ring, options),
        options,
        report,
        report.flatMap(r -> Relabelling.of(ring, r, options.work().cancellation())));
  }

  /**
   * A diary names the seams of the ring alone, so that the splices before them are taken for made.
   */
  private static SeamsLeft left(
      Run run, CoverPart cover, SeamBill seams, Optional<LogReport> report) {
    List<SeamRun> made = report.map(r -> SeamPlanner.made(cover, r)).orElse(List.of());
    SeamsLeft left = SeamsLeft.of(seams, made);
    long splices = made.stream().filter(m -> m.kind() == SeamKind.SPLICE).count();
    if (splices > 0) {
      run.assume(
          "(splices)",
          splices + " made",
          "the parts of a panel are joined before it meets its neighbours, and the diary says that"
              + " these panels met theirs");
    }
    return left;
  }

  /** Names each seam that is to be undone: the cover cannot be finished over it. */
  private static void wrong(Run run, LogReport report) {
    report.faults().forEach(f -> run.unmet(Chapter.JOINING, f.message()));
  }

  /** The rest within the limits; if no order keeps them, groups are dragged instead of carried. */
  private static PlanResult rest(
      PieceRing ring, LogReport report, io.github.seamstead.assembly.merge.PlanOptions options) {
    if (report.open().isEmpty()) {
      return new PlanResult(Optional.empty(), "all joints are made");
    }
    PlanResult within = JoinPlanner.replan(ring, report, options);
    return within.plan().isPresent()
        ? within
        : JoinPlanner.replan(ring, report, options.with(Limits.NONE));
  }

  /** How the right edge of each panel meets the left edge of the next, round the ring. */
  private static List<SeamMatch> meetings(List<Panel> panels) {
    List<SeamMatch> meetings = new ArrayList<>();
    for (int i = 0; i < panels.size(); i++) {
      meetings.add(SeamMatch.between(panels.get(i), panels.get((i + 1) % panels.size())));
    }
    return meetings;
  }

  /**
   * The order within the limits; if there is none, the one that asks the least of the crew. Groups
   * that are too heavy to carry are dragged, so the job is not lost for it: the page says which.
   */
  private static PlanResult order(
      PieceRing ring, io.github.seamstead.assembly.merge.PlanOptions options) {
    PlanResult result = JoinPlanner.plan(ring, options);
    if (result.plan().isPresent()) {
      return result;
    }
    return JoinPlanner.nearest(ring, options);
  }

  /**
   * What one team may carry: the lower of the crew's own limit and the lifting equation for cloth
   * from the ground, by the rule for teams that the handling chapter uses too.
   */
  private static Optional<TeamLift> lift(Run run, Cover stated) {
    Optional<Crew> crew = run.document().site().flatMap(Site::crew);
    double equation = LiftLimit.of(LiftTask.ofBundle()).mass();
    double one = Math.min(equation, stated.joining().map(Joining::liftLimit).orElse(equation));
    return crew.map(c -> TeamLift.ofCrew(c.people(), c.teams(), one));
  }

  private static io.github.seamstead.assembly.merge.PlanOptions options(
      Run run, Cover stated, Optional<TeamLift> lift) {
    Optional<Crew> crew = run.document().site().flatMap(Site::crew);
    int teams = crew.map(Crew::teams).orElse(1);
    if (crew.isEmpty()) {
      run.assume("$.site.crew.teams", "1", "the document states no crew");
    }
    Optional<Joining> joining = stated.joining();
    if (joining.isEmpty()) {
      run.assume("$.cover.joining.usualSeam", "9 min", JoinTimes.SEAM_PRACTICE.citation());
    }
    JoinTimes times =
        joining.map(j -> new JoinTimes(j.usualSeam(), 0, 0)).orElse(JoinTimes.commonPractice());
    lift.ifPresent(
        team -> run.worked("assembly.merge.teamlift", "What one team may carry", team::capacity));
    return io.github.seamstead.assembly.merge.PlanOptions.least(Objective.HANDLED_MASS)
        .with(times)
        .with(lift.map(TeamLift::limits).orElse(Limits.NONE))
        .withTeams(teams)
        .searching(run.work(io.github.seamstead.assembly.merge.PlanOptions.USUAL_SEARCH_NODES));
  }
}
