package io.github.seamstead.shared.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import io.github.seamstead.shared.work.Seeds;
import java.util.random.RandomGenerator;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;

class UncertainTest {

  private static final Uncertain A = new Uncertain(8, 0.3);
  private static final Uncertain B = new Uncertain(5, 0.4);

  @Test
  void independentErrorsAddInQuadrature() {
    assertThat(A.plus(B)).isEqualTo(new Uncertain(13, 0.5));
    assertThat(A.minus(B)).isEqualTo(new Uncertain(3, 0.5));
    assertThat(A.times(-2)).isEqualTo(new Uncertain(-16, 0.6));
  }

  @Test
  void productAndQuotientAgreeWithASimulation() {
    RandomGenerator random = Seeds.stream(7, "uncertain", 0);
    SummaryStatistics product = new SummaryStatistics();
    SummaryStatistics quotient = new SummaryStatistics();
    for (int i = 0; i < 200_000; i++) {
      double a = 8 + 0.03 * random.nextGaussian();
      double b = 5 + 0.04 * random.nextGaussian();
      product.addValue(a * b);
      quotient.addValue(a / b);
    }
    Uncertain a = new Uncertain(8, 0.03);
    Uncertain b = new Uncertain(5, 0.04);
    assertThat(a.times(b).standardUncertainty())
        .isCloseTo(product.getStandardDeviation(), within(0.005));
    assertThat(a.dividedBy(b).standardUncertainty())
        .isCloseTo(quotient.getStandardDeviation(), within(0.0002));
  }

  @Test
  void coverageFactorIsTheNormalQuantile() {
    OutsideCheck.of(
            "shared.uncertainty",
            "two-sided normal quantile, 95 %",
            Source.fromMemory(
                "Baarda", "A testing procedure for use in geodetic networks", "1968", ""))
        .expect(1.95996)
        .within(5e-6)
        .got(Uncertain.COVERAGE_95);
    assertThat(new Uncertain(10, 1).range(2)).isEqualTo(new Range(8, 10, 12));
  }

  @Test
  void refusesWhatIsNoUncertainty() {
    assertThatThrownBy(() -> new Uncertain(1, -0.1)).hasMessageContaining("must be 0 or more");
    assertThatThrownBy(() -> new Uncertain(Double.NaN, 0)).hasMessageContaining("finite");
    assertThatThrownBy(() -> A.dividedBy(Uncertain.exact(0))).hasMessageContaining("must not be 0");
  }
}
