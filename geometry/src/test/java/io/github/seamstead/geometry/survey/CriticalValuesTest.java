package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import org.junit.jupiter.api.Test;

class CriticalValuesTest {

  private static final Source TABLES =
      Source.fromMemory("", "Tables of the normal and chi-squared distributions", "", "");
  private static final Source TAU =
      new Source(
          "A. J. Pope",
          "The statistics of residuals and the detection of outliers",
          "1976",
          "formula from memory, values recomputed",
          io.github.seamstead.shared.source.SourceStatus.DERIVED);

  private static OutsideCheck check(String what, Source source) {
    return OutsideCheck.of("geometry.survey", what, source);
  }

  @Test
  void normal() {
    check("two-sided normal, 5 %", TABLES)
        .expect(1.95996)
        .within(1e-5)
        .got(CriticalValues.normal(0.05));
    check("two-sided normal, 1 %", TABLES)
        .expect(2.57583)
        .within(1e-5)
        .got(CriticalValues.normal(0.01));
    check("two-sided normal, 0.1 %", CriticalValues.BAARDA)
        .expect(3.29053)
        .within(1e-5)
        .got(CriticalValues.normal(0.001));
    check("non-centrality, 0.1 %, power 80 %", CriticalValues.BAARDA)
        .expect(4.1321)
        .within(1e-3)
        .got(CriticalValues.noncentrality(0.001, 0.8));
    check("non-centrality, 5 %, power 80 %", TABLES)
        .expect(2.8016)
        .within(1e-3)
        .got(CriticalValues.noncentrality(0.05, 0.8));
  }

  @Test
  void tau() {
    int[] nu = {2, 3, 5, 6, 10, 20};
    double[] five = {1.4099, 1.6454, 1.8143, 1.8481, 1.9039, 1.9358};
    double[] tenth = {1.4142, 1.7303, 2.1781, 2.3292, 2.6786, 2.9749};
    for (int i = 0; i < nu.length; i++) {
      check("tau, 5 %, nu " + nu[i], TAU)
          .expect(five[i])
          .within(1e-4)
          .got(CriticalValues.tau(0.05, nu[i]));
      check("tau, 0.1 %, nu " + nu[i], TAU)
          .expect(tenth[i])
          .within(1e-4)
          .got(CriticalValues.tau(0.001, nu[i]));
      assertThat(CriticalValues.tau(0.001, nu[i])).isLessThan(Math.sqrt(nu[i]));
    }
    check("tau, 0.1 %, nu 100", TAU)
        .expect(3.2263)
        .within(1e-4)
        .got(CriticalValues.tau(0.001, 100));
  }

  @Test
  void chiSquared() {
    int[] nu = {1, 2, 3, 5, 6, 10};
    double[] values = {3.8415, 5.9915, 7.8147, 11.0705, 12.5916, 18.3070};
    for (int i = 0; i < nu.length; i++) {
      check("chi-squared, 95 %, nu " + nu[i], TABLES)
          .expect(values[i])
          .within(1e-4)
          .got(CriticalValues.chiSquared(0.95, nu[i]));
    }
  }

  @Test
  void tooFewRedundanciesAreRefused() {
    assertThatThrownBy(() -> CriticalValues.tau(0.001, 1))
        .hasMessageContaining("degrees of freedom: given 1");
    assertThat(OutlierTest.of(SigmaBasis.ESTIMATED, 1).kind()).isEqualTo(OutlierTest.Kind.NONE);
    assertThat(OutlierTest.of(SigmaBasis.KNOWN, 1).kind()).isEqualTo(OutlierTest.Kind.NORMAL);
    assertThat(OutlierTest.of(SigmaBasis.ESTIMATED, 6).critical().get()).isLessThan(2.45);
  }
}
