package io.github.seamstead.geometry.templates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.geometry.survey.Adjustment;
import io.github.seamstead.geometry.survey.CriticalValues;
import io.github.seamstead.geometry.survey.Node;
import io.github.seamstead.geometry.survey.SurveyShape;
import io.github.seamstead.geometry.survey.TestFrames;
import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class TemplatesProperties {

  private static AsBuilt frame(int sides, boolean truncated, int seed) {
    return AsBuilt.of(TestFrames.survey(sides, truncated, 0.03, 0.002, seed).adjust().orThrow());
  }

  /** Oracle: every partition into at most k groups, for frames small enough to list them. */
  @Property(tries = 40, seed = "2026110031")
  void noPartitionIsBetter(
      @ForAll @IntRange(min = 3, max = 8) int sides,
      @ForAll boolean truncated,
      @ForAll @IntRange(min = 1, max = 4) int k,
      @ForAll @IntRange(max = 1000) int seed) {
    AsBuilt frame = frame(sides, truncated, seed);
    TemplateSet set = Templates.plan(frame, 0, 0.95, k).sets().get(Math.min(k, sides) - 1);
    double best = bestPartition(frame, new int[sides], 0, 0, Math.min(k, sides));
    assertThat(set.lowerBound()).isCloseTo(best, within(1e-12));
    assertThat(set.worstMisfit()).isGreaterThanOrEqualTo(best - 1e-12);
    if (!truncated) {
      assertThat(set.isProvenBest()).isTrue();
    }
  }

  private static double bestPartition(AsBuilt frame, int[] group, int at, int used, int k) {
    if (at == group.length) {
      return misfit(frame, group, used);
    }
    double best = Double.POSITIVE_INFINITY;
    for (int g = 0; g < Math.min(used + 1, k); g++) {
      group[at] = g;
      best = Math.min(best, bestPartition(frame, group, at + 1, Math.max(used, g + 1), k));
    }
    return best;
  }

  private static double misfit(AsBuilt frame, int[] group, int groups) {
    double z = CriticalValues.normal(0.1);
    double worst = 0;
    for (int g = 0; g < groups; g++) {
      for (FaceMeasure measure : frame.faces().get(0).measures().keySet()) {
        double most = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < group.length; i++) {
          if (group[i] == g) {
            Uncertain f = frame.faces().get(i).measure(measure);
            most = Math.max(most, f.value() + z * f.standardUncertainty());
            least = Math.min(least, f.value());
          }
        }
        worst = Math.max(worst, most - least);
      }
    }
    return worst;
  }

  @Property(tries = 60, seed = "2026110032")
  void noPanelIsShortAndEveryFaceIsServedOnce(
      @ForAll @IntRange(min = 3, max = 24) int sides,
      @ForAll boolean truncated,
      @ForAll @IntRange(max = 1000) int seed) {
    AsBuilt frame = frame(sides, truncated, seed);
    TemplatePlan plan = Templates.plan(frame, 0.02);
    double z = CriticalValues.normal(0.1);
    double before = Double.POSITIVE_INFINITY;
    for (TemplateSet set : plan.sets()) {
      assertThat(set.worstMisfit()).isLessThanOrEqualTo(before);
      assertThat(set.isProvenBest() || truncated).isTrue();
      before = set.worstMisfit();
      assertThat(set.templates().stream().flatMap(t -> t.faces().stream()).sorted())
          .containsExactlyElementsOf(frame.faces().stream().map(AsBuiltFace::number).toList());
      for (FaceFit fit : set.faces()) {
        for (Map.Entry<FaceMeasure, Uncertain> entry : fit.fullness().entrySet()) {
          Uncertain f = entry.getValue();
          assertThat(f.value()).isGreaterThanOrEqualTo(z * f.standardUncertainty() - 1e-12);
        }
        assertThat(fit.greatest()).isLessThanOrEqualTo(set.worstMisfit());
        assertThat(fit.otherDiagonal().isPresent()).isEqualTo(truncated);
        fit.otherDiagonal()
            .ifPresent(
                f ->
                    assertThat(f.value())
                        .isGreaterThanOrEqualTo(z * f.standardUncertainty() - 1e-12));
      }
      for (SeamFit seam : set.seams()) {
        assertThat(seam.fullness().value()).isPositive();
        assertThat(set.hem().get(seam.seam() - 1).takeUp().value())
            .isCloseTo(seam.fullness().value() + seam.ease(), within(1e-12));
      }
    }
    assertThat(plan.floor()).isLessThanOrEqualTo(before);
    plan.recommended().ifPresent(set -> assertThat(set.worstMisfit()).isLessThanOrEqualTo(0.02));
  }

  @Property(tries = 30, seed = "2026110033")
  void workedStepsEndInTheWorstMisfit(
      @ForAll @IntRange(min = 3, max = 10) int sides,
      @ForAll boolean truncated,
      @ForAll @IntRange(max = 1000) int seed) {
    AsBuilt frame = frame(sides, truncated, seed);
    for (TemplateSet set : Templates.plan(frame, 0.01).sets()) {
      StepRecorder steps = new StepRecorder();
      double misfit = Templates.worstMisfit(frame, set, Templates.USUAL_CONFIDENCE, steps);
      DerivationChecks.assertFollowsTo(
          steps.derivation("geometry.templates.misfit", "Templates"), misfit);
      assertThat(misfit).isEqualTo(set.worstMisfit());
    }
  }

  /** The flat face against the adjusted corners in space. */
  @Property(tries = 40, seed = "2026110034")
  void facesKeepTheirEdgesAndSeamsAreEqual(
      @ForAll @IntRange(min = 3, max = 16) int sides,
      @ForAll boolean truncated,
      @ForAll @IntRange(max = 1000) int seed) {
    Adjustment adjustment =
        TestFrames.survey(sides, truncated, 0.05, 0.002, seed).adjust().orThrow();
    AsBuilt frame = AsBuilt.of(adjustment);
    SurveyShape shape = adjustment.survey().shape();
    for (AsBuiltFace face : frame.faces()) {
      int right = truncated ? 3 : 2;
      assertThat(face.outline().vertex(0).norm()).isZero();
      assertThat(face.outline().vertex(1).getY()).isZero();
      int i = face.number();
      assertThat(face.outline().edgeLength(0))
          .isCloseTo(
              distance(adjustment, shape.baseCorner(i - 1), shape.baseCorner(i)), within(1e-9));
      assertThat(face.outline().edgeLength(1))
          .isCloseTo(distance(adjustment, shape.baseCorner(i), shape.hipTop(i)), within(1e-9));
      assertThat(face.outline().edgeLength(right))
          .isCloseTo(
              distance(adjustment, shape.baseCorner(i - 1), shape.hipTop(i - 1)), within(1e-9));
      AsBuiltFace next = frame.faces().get(i % sides);
      assertThat(next.outline().edgeLength(right))
          .isCloseTo(face.outline().edgeLength(1), within(1e-9));
      face.otherDiagonal()
          .ifPresent(
              d ->
                  assertThat(d.value())
                      .isCloseTo(
                          face.outline().vertex(1).distance(face.outline().vertex(3)),
                          within(1e-9)));
      if (truncated) {
        double first =
            face.outline().vertex(0).distance(face.outline().vertex(2))
                - distance(adjustment, shape.baseCorner(i - 1), shape.hipTop(i));
        double second =
            face.outline().vertex(1).distance(face.outline().vertex(3))
                - distance(adjustment, shape.baseCorner(i), shape.hipTop(i - 1));
        assertThat(first).isCloseTo(second, within(1e-9)).isGreaterThan(-1e-9);
      } else {
        assertThat(face.outOfPlane()).isZero();
      }
    }
    assertThat(
            frame.corners().stream().mapToDouble(c -> c.aboveLowest().orElseThrow().value()).min())
        .hasValueCloseTo(0.0, within(1e-12));
  }

  private static double distance(Adjustment adjustment, Node a, Node b) {
    return adjustment.position(a).distance(adjustment.position(b));
  }
}
