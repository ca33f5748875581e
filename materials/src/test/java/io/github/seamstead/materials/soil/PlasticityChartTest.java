package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlasticityChartTest {

  private static final Source EXAMPLES =
      Source.found("", "Worked classifications after ASTM D2487", "", "homework answers");

  @ParameterizedTest
  @CsvSource({
    "30,7.30,19.80",
    "40,14.60,28.80",
    "50,21.90,37.80",
    "60,29.20,46.80",
    "80,43.80,64.80"
  })
  void lines(double liquid, double aLine, double uLine) {
    PlasticityChart chart = PlasticityChart.of(liquid / 100, 0.2);
    OutsideCheck.of("materials.soil", "A-line at LL " + liquid + ", %", PlasticityChart.SOURCE)
        .expect(aLine)
        .within(0.01)
        .got(chart.aLine() * 100);
    OutsideCheck.of("materials.soil", "U-line at LL " + liquid + ", %", PlasticityChart.SOURCE)
        .expect(uLine)
        .within(0.01)
        .got(chart.uLine() * 100);
  }

  @ParameterizedTest
  @CsvSource({"61,31,CH", "44,21,CL", "60,25,CH", "42,21,CL", "45,25,CL", "37,10,CL"})
  void publishedGroups(double liquid, double plastic, String symbol) {
    OutsideCheck.of(
            "materials.soil",
            "group of LL " + liquid + ", PL " + plastic + " is " + symbol,
            EXAMPLES)
        .expect(1)
        .within(0)
        .got(PlasticityChart.of(liquid / 100, plastic / 100).symbol().equals(symbol) ? 1 : 0);
  }

  @Test
  void aPointAboveTheUpperLineIsDoubted() {
    // Published as CL without a warning although the index 27 lies above the line's 26.1.
    assertThat(PlasticityChart.of(0.37, 0.10).aboveUpperLine()).isTrue();
    assertThat(new ConsistencyLimits(0.37, 0.10).remarks()).anyMatch(t -> t.contains("U-line"));
    assertThat(PlasticityChart.of(0.61, 0.31).aboveUpperLine()).isFalse();
  }

  @Test
  void coarseGroups() {
    Optional<ConsistencyLimits> none = Optional.empty();
    assertGroup("SP", UnifiedGroup.of(0.03, 0, 0.90 / 0.35, 0.60 * 0.60 / (0.35 * 0.90), none));
    assertGroup("SW", UnifiedGroup.of(0.10, 0.04, 1.5 / 0.18, 0.61 * 0.61 / (0.18 * 1.5), none));
    UnifiedGroup clayey =
        UnifiedGroup.of(0.25, 0.08, 7.5, 1.8, Optional.of(new ConsistencyLimits(0.35, 0.22)));
    assertGroup("SW-SC", clayey);
    assertThat(clayey.withGravel()).isTrue();
  }

  @Test
  void plasticAboveLiquidIsRefused() {
    assertThatThrownBy(() -> new ConsistencyLimits(0.25, 0.40))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("plastic limit: given 0.4")
        .hasMessageContaining("liquid limit 0.25");
  }

  @Test
  void derivationFollows() {
    StepRecorder steps = new StepRecorder();
    PlasticityChart chart = PlasticityChart.of(0.44, 0.21, steps);
    DerivationChecks.assertFollowsTo(
        steps.derivation("materials.soil.plasticity_chart", "plasticity chart"),
        chart.aboveALine());
  }

  private static void assertGroup(String symbol, UnifiedGroup group) {
    OutsideCheck.of("materials.soil", "group is " + symbol, EXAMPLES)
        .expect(1)
        .within(0)
        .got(group.symbol().equals(symbol) ? 1 : 0);
  }

  @Test
  void aSieveSheetThatReachesTellsTheGroup() {
    ConsistencyLimits limits = new ConsistencyLimits(0.35, 0.18);
    SieveAnalysis loam =
        new SieveAnalysis(
            List.of(
                new SieveAnalysis.Sieve(0.00475, 0),
                new SieveAnalysis.Sieve(0.002, 0.1),
                new SieveAnalysis.Sieve(0.425e-3, 0.2),
                new SieveAnalysis.Sieve(0.075e-3, 0.1)),
            0.6,
            true);
    assertThat(UnifiedGroup.of(loam, Optional.of(limits)).orElseThrow().symbol()).isEqualTo("CL");
    assertThat(UnifiedGroup.of(loam, Optional.empty())).isEmpty();
    SieveAnalysis sand =
        new SieveAnalysis(
            List.of(
                new SieveAnalysis.Sieve(0.00475, 0),
                new SieveAnalysis.Sieve(0.5e-3, 0.5),
                new SieveAnalysis.Sieve(0.075e-3, 0.48)),
            0.02,
            true);
    assertThat(UnifiedGroup.of(sand, Optional.empty()).orElseThrow().symbol()).startsWith("S");
    SieveAnalysis coarse =
        new SieveAnalysis(
            List.of(new SieveAnalysis.Sieve(0.00475, 0), new SieveAnalysis.Sieve(0.2e-3, 0.5)),
            0.5,
            true);
    assertThat(UnifiedGroup.of(coarse, Optional.of(limits))).isEmpty();
  }
}
