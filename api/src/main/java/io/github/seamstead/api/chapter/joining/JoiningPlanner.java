package io.github.seamstead.api.chapter.joining;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.Crew;
import io.github.seamstead.api.job.Joining;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.assembly.merge.HandledMass;
import io.github.seamstead.assembly.merge.JoinPlanner;
import io.github.seamstead.assembly.merge.JoinTimes;
import io.github.seamstead.assembly.merge.Limits;
import io.github.seamstead.assembly.merge.Objective;
import io.github.seamstead.assembly.merge.PlanResult;
import io.github.seamstead.assembly.ring.JointMap;
import io.github.seamstead.assembly.ring.Load;
import io.github.seamstead.assembly.ring.Piece;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.assembly.ring.View;
import io.github.seamstead.geometry.pattern.Panel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Names the joints and plans the order in which panels are joined. */
final class JoiningPlanner {

  private JoiningPlanner() {}

  static Optional<JoiningPart> plan(Run run, CoverPart cover) {
    Cover stated = run.document().cover().orElseThrow();
    return run.attempt("$.cover", () -> ring(cover, stated))
        .flatMap(ring -> run.attempt("$.cover.joining", () -> part(run, ring, stated)));
  }

  private static PieceRing ring(CoverPart cover, Cover stated) {
    List<Piece> pieces = new ArrayList<>();
    List<Double> joints = new ArrayList<>();
    for (int face = 1; face <= cover.panels().size(); face++) {
      Panel panel = cover.panels().get(face - 1);
      double mass = panel.clothArea() * stated.fabric().massPerArea();
      double bulk = panel.clothArea() * stated.fabric().thickness();
      Load load = new Load(mass, bulk, 0, panel.clothArea());
      pieces.add(Piece.of(Integer.toString(face), load).cutBy(panel.id()));
      joints.add(panel.face().edgeLength(1));
    }
    return PieceRing.ring(pieces, joints);
  }

  private static JoiningPart part(Run run, PieceRing ring, Cover stated) {
    io.github.seamstead.assembly.merge.PlanOptions options = options(run, stated);
    PlanResult result = JoinPlanner.plan(ring, options);
    if (result.plan().isEmpty()) {
      run.unmet(Chapter.JOINING, result.reason());
    }
    result
        .plan()
        .ifPresent(
            plan ->
                run.worked(
                    "assembly.merge.handledmass",
                    "The mass handled over all joints",
                    steps -> HandledMass.of(plan, steps)));
    return new JoiningPart(
        ring,
        JointMap.of(ring, View.AS_IT_STANDS),
        JointMap.of(ring, View.AS_IT_LIES),
        result.plan(),
        JoinPlanner.compare(ring, options),
        options);
  }

  private static io.github.seamstead.assembly.merge.PlanOptions options(Run run, Cover stated) {
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
    Limits limits = Limits.NONE;
    if (joining.isPresent() && crew.isPresent()) {
      limits = limits.withCarriedMass(joining.get().liftLimit() * crew.get().people() / teams);
    }
    return io.github.seamstead.assembly.merge.PlanOptions.least(Objective.HANDLED_MASS)
        .with(times)
        .with(limits)
        .withTeams(teams);
  }
}
