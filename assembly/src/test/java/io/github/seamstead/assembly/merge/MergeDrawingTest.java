package io.github.seamstead.assembly.merge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.assembly.ring.Arc;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MergeDrawingTest {

  private static MergePlan plan(int n) {
    return JoinPlanner.plan(
            PieceRing.ofEqualPieces(n, 5, 3),
            PlanOptions.least(Objective.HANDLED_MASS).withTeams(2))
        .orThrow();
  }

  @Test
  void theTreeStandsOnItsLeaves() {
    TreeLayout layout = TreeLayout.of(plan(10));
    assertThat(layout.nodes()).hasSize(19);
    assertThat(layout.width()).isEqualTo(9);
    assertThat(layout.nodes().stream().filter(node -> node.parent().isEmpty())).hasSize(1);
    Set<List<Double>> places = new HashSet<>();
    for (TreeLayout.Node node : layout.nodes()) {
      assertThat(places.add(List.of(node.x(), node.y()))).isTrue();
      node.parent()
          .ifPresent(
              parent -> {
                assertThat(layout.nodes().get(parent).y()).isGreaterThan(node.y());
                assertThat(parent).isGreaterThan(node.index());
              });
    }
    TreeLayout.Node root = layout.nodes().get(18);
    assertThat(root.mass()).isEqualTo(50);
    assertThat(root.y()).isEqualTo(layout.height());
  }

  @Test
  void handledMassIsShownStepByStep() {
    MergePlan plan = plan(10);
    StepRecorder recorder = new StepRecorder();
    double value = HandledMass.of(plan, recorder);
    Derivation derivation = recorder.derivation("assembly.merge.handledmass", "handled mass");
    DerivationChecks.assertFollowsTo(derivation, HandledMass.of(plan));
    assertThat(value).isEqualTo(plan.cost().handledMass()).isEqualTo(220);
    assertThat(derivation.steps()).hasSize(10);
  }

  @Test
  void teamRulesStandSideBySide() {
    Source uk =
        Source.found(
            "Health and Safety Executive, as quoted by Network Rail",
            "Lifting and handling in teams",
            "",
            "team of two, 20 kg each");
    // The source prints 26.6, which is 26.67 cut short.
    OutsideCheck.of("assembly.merge", "team of two, 20 kg each: kg", uk)
        .expect(26.67)
        .within(0.005)
        .got(TeamLift.of(2, 20).capacity());
    TeamLift team = TeamLift.of(2, 23);
    OutsideCheck.of("assembly.merge", "team of two, 23 kg each: kg", uk)
        .expect(30.7)
        .within(0.05)
        .got(team.capacity());
    OutsideCheck.of(
            "assembly.merge",
            "two persons of 23 kg by the multiplier 0.85: kg",
            Source.found("CEN", "EN 1005-2", "", "two persons 0.85"))
        .expect(39.1)
        .within(0.05)
        .got(team.rivalCapacity());
    assertThat(TeamLift.of(3, 20).capacity()).isEqualTo(30);
    assertThat(TeamLift.of(1, 20).capacity()).isEqualTo(20);
    assertThat(team.limits().carriedMass()).hasValue(team.capacity());
    assertThat(team.caution().text()).contains("Local codes");
    StepRecorder recorder = new StepRecorder();
    team.capacity(recorder);
    DerivationChecks.assertFollowsTo(
        recorder.derivation("assembly.merge.teamlift", "team lift"), team.capacity());
    assertThatThrownBy(() -> TeamLift.of(5, 20))
        .hasMessage("people of one carry: given 5, must be from 1 to 4");
  }

  @Test
  void aHeavyCarryIsCautioned() {
    assertThat(plan(8).cautions()).hasSize(1);
    MergePlan heavy =
        JoinPlanner.plan(
                PieceRing.ofEqualPieces(12, 6, 3), PlanOptions.least(Objective.HANDLED_MASS))
            .orThrow();
    assertThat(heavy.cost().heaviestCarried()).isEqualTo(36);
    assertThat(heavy.cautions()).hasSize(2);
    assertThat(heavy.cautions().get(0).text()).contains("36 kg").contains("licensed practice");
  }

  @Test
  void refusesWishesThatDoNotFit() {
    PieceRing ring = PieceRing.ofEqualPieces(6, 5, 3);
    PlanOptions options = PlanOptions.least(Objective.HANDLED_MASS);
    assertThatThrownBy(() -> JoinPlanner.plan(ring, options.closingAt(7)))
        .hasMessage("closing joint: given 7, must be from 1 to 6");
    assertThatThrownBy(
            () -> JoinPlanner.plan(ring, options.keeping(List.of(new Arc(1, 3), new Arc(3, 2)))))
        .hasMessage("first groups: given 1-3 and 3-4, must lie apart or one inside the other");
    assertThatThrownBy(() -> options.withTeams(0))
        .hasMessage("teams: given 0, must be from 1 to 100");
    assertThat(JoinPlanner.plan(ring, options.with(Limits.NONE.withCarriedMass(10))).reason())
        .isEqualTo(
            "no order of joining keeps the limits: the heaviest carry is at least 15 kg, the limit"
                + " is 10 kg");
    assertThat(JoinPlanner.plan(ring, options.with(Limits.NONE.withCarriedMass(15))).plan())
        .isPresent();
    assertThat(PlanOptions.least(Objective.WORK_TIME).objective().label()).isEqualTo("work time");
  }
}
