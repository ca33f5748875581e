package io.github.seamstead.examples.derivations;

import io.github.seamstead.assembly.merge.HandledMass;
import io.github.seamstead.assembly.merge.JoinPlanner;
import io.github.seamstead.assembly.merge.Objective;
import io.github.seamstead.assembly.merge.PlanOptions;
import io.github.seamstead.assembly.merge.TeamLift;
import io.github.seamstead.assembly.ring.JointMark;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.assembly.schedule.AdhesiveTimes;
import io.github.seamstead.assembly.schedule.CriticalPath;
import io.github.seamstead.assembly.schedule.LearningCurve;
import io.github.seamstead.assembly.schedule.Network;
import io.github.seamstead.assembly.schedule.Task;
import io.github.seamstead.assembly.schedule.ThreePoint;
import java.util.List;

/** Joints, lifts and time. */
final class AssemblySamples {

  private AssemblySamples() {}

  static void addTo(Samples to) {
    to.add("assembly.ring.check", steps -> JointMark.check("C", steps));
    to.add(
        "assembly.merge.handledmass",
        steps ->
            HandledMass.of(
                JoinPlanner.plan(
                        PieceRing.ofEqualPieces(9, 4, 3), PlanOptions.least(Objective.HANDLED_MASS))
                    .orThrow(),
                steps));
    to.add("assembly.merge.teamlift", steps -> TeamLift.of(2, 25).capacity(steps));
    to.add("assembly.schedule.pert", steps -> new ThreePoint(400, 540, 900).mean(steps));
    to.add(
        "assembly.schedule.criticalpath",
        steps ->
            CriticalPath.of(
                    Network.of(
                        List.of(
                            Task.of("a", ThreePoint.exactly(5)),
                            Task.of("b", new ThreePoint(2, 3, 7), "a"),
                            Task.of("c", ThreePoint.exactly(1), "a"))))
                .length(steps));
    to.add(
        "assembly.schedule.learning",
        steps -> new LearningCurve(LearningCurve.Rule.UNIT, 0.8).total(600, 9, steps));
    to.add(
        "assembly.schedule.adhesive",
        steps -> new AdhesiveTimes(300, 7200, 60, 90).portions(10, steps));
  }
}
