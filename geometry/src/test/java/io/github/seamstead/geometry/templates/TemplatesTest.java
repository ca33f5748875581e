package io.github.seamstead.geometry.templates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.survey.Adjustment;
import io.github.seamstead.geometry.survey.Node;
import io.github.seamstead.geometry.survey.ResidualPlot;
import io.github.seamstead.geometry.survey.Survey;
import io.github.seamstead.geometry.survey.TestFrames;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Cancellation;
import io.github.seamstead.shared.work.Work;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class TemplatesTest {

  private static AsBuilt built(Map<Node, Vector3D> nodes, int sides, boolean truncated) {
    Survey survey =
        Survey.of(
            TestFrames.shape(sides, truncated), TestFrames.readings(nodes, sides, truncated, 0, 1));
    return AsBuilt.of(survey.adjust().orThrow());
  }

  @Test
  void aRegularFrameNeedsOneTemplate() {
    AsBuilt frame = built(TestFrames.bent(12, false, 3, 3.5, 0, 1), 12, false);
    TemplatePlan plan = Templates.plan(frame, 0.005);
    assertThat(plan.sets()).hasSize(1);
    assertThat(plan.recommended()).isPresent();
    // Only the uncertainty of the readings is left.
    assertThat(plan.sets().get(0).worstMisfit()).isCloseTo(plan.floor(), within(1e-9));
  }

  /** One corner pushed out by 5 cm: the two faces beside it differ, the others are alike. */
  @Test
  void oneBentCornerCostsTwoMoreTemplates() {
    Map<Node, Vector3D> nodes = new TreeMap<>(TestFrames.bent(8, false, 3, 3.5, 0, 1));
    Vector3D corner = nodes.get(Node.base(3));
    nodes.put(Node.base(3), corner.multiply(3.05 / 3));
    AsBuilt frame = built(nodes, 8, false);
    TemplatePlan plan = Templates.plan(frame, 0.005);
    assertThat(plan.sets()).hasSize(3);
    TemplateSet best = plan.recommended().orElseThrow();
    assertThat(best.templates().stream().map(Template::faces))
        .containsExactlyInAnyOrder(List.of(1, 2, 5, 6, 7, 8), List.of(3), List.of(4));
    // Hip 3 is the longer: with one template for all, the seams elsewhere have that much to spare.
    TemplateSet one = plan.sets().get(0);
    double longer = frame.seams().get(2).length().value() - frame.seams().get(0).length().value();
    assertThat(longer).isGreaterThan(0.02);
    assertThat(one.hem().get(0).takeUp().value()).isGreaterThan(longer);
    assertThat(one.hem().get(2).takeUp().value()).isLessThan(0.01);
    assertThat(one.seams()).allSatisfy(s -> assertThat(s.fullness().value()).isPositive());
  }

  /** Mirror images are not the same panel: its good side would come to lie inside. */
  @Test
  void leftAndRightAreNotExchanged() {
    Map<Node, Vector3D> nodes = new TreeMap<>(TestFrames.bent(4, false, 3, 3.5, 0, 1));
    nodes.put(Node.APEX, Vector3D.of(0.3, 0, 3.5));
    AsBuilt frame = built(nodes, 4, false);
    // The apex leans towards a corner: faces come in two pairs of mirror images.
    TemplatePlan plan = Templates.plan(frame, 0.005);
    assertThat(plan.recommended().orElseThrow().templates()).hasSize(4);
  }

  @Test
  void heightsOfCornersAreReported() {
    Map<Node, Vector3D> nodes = new TreeMap<>(TestFrames.bent(6, false, 3, 3.5, 0, 1));
    nodes.put(Node.base(2), nodes.get(Node.base(2)).add(Vector3D.of(0, 0, -0.04)));
    AsBuilt frame = built(nodes, 6, false);
    assertThat(frame.levelled()).isTrue();
    assertThat(frame.corners().get(1).aboveLowest().orElseThrow().value()).isZero();
    assertThat(frame.corners().get(4).aboveLowest().orElseThrow().value())
        .isCloseTo(0.04, within(1e-9));
    TemplateSet one = Templates.plan(frame, 1).recommended().orElseThrow();
    // The low corner's hip is the longest: all others turn up more.
    double low = one.hem().get(1).takeUp().value();
    assertThat(one.hem())
        .allSatisfy(h -> assertThat(h.takeUp().value()).isGreaterThanOrEqualTo(low));
  }

  @Test
  void aTwistedFaceIsLaidFlatAndItsTwistStated() {
    Map<Node, Vector3D> nodes = new TreeMap<>(TestFrames.bent(6, true, 3, 3.5, 0, 1));
    AsBuilt straight = built(nodes, 6, true);
    assertThat(straight.faces()).allSatisfy(f -> assertThat(f.outOfPlane()).isLessThan(1e-9));
    nodes.put(Node.opening(2), nodes.get(Node.opening(2)).add(Vector3D.of(0, 0, 0.05)));
    AsBuilt twisted = built(nodes, 6, true);
    AsBuiltFace face = twisted.faces().get(1);
    assertThat(face.outOfPlane()).isGreaterThan(0.001);
    // Independent: distances of the corners from their least-squares plane are all alike.
    Vector3D a = nodes.get(Node.base(1));
    Vector3D b = nodes.get(Node.base(2));
    Vector3D c = nodes.get(Node.opening(2));
    Vector3D d = nodes.get(Node.opening(1));
    Vector3D normal = c.subtract(a).cross(d.subtract(b)).normalize();
    Vector3D middle = Vector3D.centroid(a, b, c, d);
    for (Vector3D corner : List.of(a, b, c, d)) {
      assertThat(Math.abs(corner.subtract(middle).dot(normal)))
          .isCloseTo(face.outOfPlane(), within(1e-9));
    }
  }

  /** The base may be full while the middle is short: the hem must know. */
  @Test
  void shortnessInTheMiddleIsReported() {
    Map<Node, Vector3D> nodes = new TreeMap<>(TestFrames.bent(4, false, 3, 3.5, 0, 1));
    // Corner 1 swings about the apex's plumb line: two bases change, no hip does.
    Vector3D corner = nodes.get(Node.base(1));
    nodes.put(
        Node.base(1),
        Vector3D.of(
            corner.getX() * Math.cos(0.03) - corner.getY() * Math.sin(0.03),
            corner.getX() * Math.sin(0.03) + corner.getY() * Math.cos(0.03),
            0));
    AsBuilt frame = built(nodes, 4, false);
    TemplateSet one = Templates.plan(frame, 1).recommended().orElseThrow();
    assertThat(one.faces().stream().mapToDouble(FaceFit::least).min().orElseThrow()).isPositive();
    assertThat(one.faces().stream().mapToDouble(f -> f.middle().value()).min().orElseThrow())
        .isNegative();
  }

  @Test
  void aColouringOutOfBudgetLeavesTheQuestionOpen() {
    int n = 40;
    boolean[][] clash = new boolean[n][n];
    // An even ring: two colours do, but three branches are too few to find them.
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      clash[i][next] = true;
      clash[next][i] = true;
    }
    ConflictColouring.Answer open = solve(clash, 3);
    assertThat(open.colouring()).isEmpty();
    assertThat(open.isCertain()).isFalse();
    ConflictColouring.Answer found = solve(clash, 1000);
    assertThat(found.colouring()).isPresent();
    // A chord makes a triangle: two colours cannot do.
    clash[0][2] = true;
    clash[2][0] = true;
    ConflictColouring.Answer none = solve(clash, 1000);
    assertThat(none.colouring()).isEmpty();
    assertThat(none.isCertain()).isTrue();
  }

  private static ConflictColouring.Answer solve(boolean[][] clash, long budget) {
    return ConflictColouring.solve(clash, 2, budget, new Cancellation(), Long.MAX_VALUE);
  }

  @Test
  void aSearchThatIsCancelledEndsWithTheSetsItHasAndSaysSo() {
    AsBuilt frame = built(TestFrames.bent(6, false, 3, 3.5, 0.02, 1), 6, false);
    TemplatePlan whole = Templates.plan(frame, 0);
    Work work = Work.of(Budget.ofWork(Templates.COLOURING_BUDGET), 0);
    TemplatePlan same = Templates.plan(frame, 0, work);
    assertThat(same.stopped()).isFalse();
    assertThat(same.sets()).hasSameSizeAs(whole.sets());
    work.cancellation().cancel();
    TemplatePlan cut = Templates.plan(frame, 0, work);
    assertThat(cut.stopped()).isTrue();
    assertThat(cut.sets()).hasSize(1);
    assertThat(cut.sets().get(0).worstMisfit()).isEqualTo(whole.sets().get(0).worstMisfit());
    assertThat(cut.recommended()).isEmpty();
    Work late = Work.of(new Budget(1000, Optional.of(Duration.ZERO)), 0);
    assertThat(Templates.plan(frame, 0, late).stopped()).isTrue();
  }

  @Test
  void aColouringThatIsCancelledLeavesTheQuestionOpen() {
    boolean[][] clash = {{false, true}, {true, false}};
    Cancellation cancellation = new Cancellation();
    cancellation.cancel();
    ConflictColouring.Answer open =
        ConflictColouring.solve(clash, 1, Long.MAX_VALUE, cancellation, Long.MAX_VALUE);
    assertThat(open.isCertain()).isFalse();
    ConflictColouring.Answer none =
        ConflictColouring.solve(clash, 1, Long.MAX_VALUE, new Cancellation(), Long.MAX_VALUE);
    assertThat(none.isCertain()).isTrue();
  }

  @Test
  void aToleranceBelowTheUncertaintyHasNoRecommendation() {
    AsBuilt frame = built(TestFrames.bent(6, false, 3, 3.5, 0, 1), 6, false);
    TemplatePlan plan = Templates.plan(frame, 1e-5);
    assertThat(plan.recommended()).isEmpty();
    assertThat(plan.floor()).isGreaterThan(1e-5);
  }

  @Test
  void badInput() {
    AsBuilt frame = built(TestFrames.bent(6, false, 3, 3.5, 0, 1), 6, false);
    assertThatThrownBy(() -> Templates.plan(frame, -1))
        .hasMessage("tolerance: given -1 m, must be 0 m or more");
    assertThatThrownBy(() -> Templates.plan(frame, 0.01, 1, 3))
        .hasMessageContaining("confidence: given 1");
    assertThatThrownBy(() -> frame.faces().get(0).measure(FaceMeasure.TOP))
        .hasMessageContaining("given top");
  }

  @Test
  void theResidualPlotHoldsEveryReadingAndNode() {
    Survey survey = TestFrames.survey(6, false, 0.05, 0.003, 8);
    Adjustment adjustment = survey.adjust().orThrow();
    ResidualPlot plot = ResidualPlot.of(adjustment);
    assertThat(plot.lines()).hasSize(survey.readings().size());
    assertThat(plot.nodes()).hasSize(survey.nodes().size());
    List<Double> residuals = new ArrayList<>();
    adjustment.readings().forEach(r -> residuals.add(Math.abs(r.residual())));
    assertThat(plot.greatestResidual())
        .isEqualTo(residuals.stream().mapToDouble(r -> r).max().orElseThrow());
    double drawn = plot.residualMagnification() * plot.greatestResidual();
    assertThat(drawn / plot.extent()).isBetween(0.03, 0.1);
    assertThat(plot.deviationMagnification()).isGreaterThanOrEqualTo(1);
  }
}
