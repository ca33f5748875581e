package io.github.seamstead.examples.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ReferencePageTest {

  private static final Path PROJECT = Path.of("..");
  private static final int LEAST_CHECKS = 60;

  private static CheckedValue value(String status, String expected, String got, String tolerance) {
    return CheckedValue.parse(
        String.join("\t", "m.p", "case", "source", status, expected, got, tolerance, "MitreTest"));
  }

  @Test
  void thePageHoldsEveryCheckThatTheModulesMade() throws IOException {
    List<String> missing = ReferenceFiles.missing(PROJECT);
    assumeTrue(missing.isEmpty(), "skipped: the tests did not run before these: " + missing);
    List<CheckedValue> values = ReferenceFiles.read(PROJECT);
    assertThat(values).hasSizeGreaterThanOrEqualTo(LEAST_CHECKS).allMatch(CheckedValue::holds);
    String html =
        ReferencePage.html(
            values,
            PublishedCalculations.all(),
            (test, type) -> ReferenceFiles.uses(PROJECT, test, type));
    assertThat(html).doesNotContain("NaN");
    int rows = html.split("<tr>", -1).length - 1;
    assertThat(rows).isGreaterThan(values.size() + PublishedCalculations.all().size());
    Files.writeString(Path.of("target", "reference.html"), html);
  }

  @Test
  void kindsAreKeptApart() {
    assertThat(CheckKind.of(value("found", "3.63", "3.6339", "0.005")))
        .isEqualTo(CheckKind.PUBLISHED);
    assertThat(CheckKind.of(value("from memory", "25", "25.3", "0.5")))
        .isEqualTo(CheckKind.PUBLISHED);
    assertThat(CheckKind.of(value("found", "1555", "1555", "0"))).isEqualTo(CheckKind.COPIED);
    assertThat(CheckKind.of(value("derived", "2.5", "2.5", "1e-9")))
        .isEqualTo(CheckKind.RECOMPUTED);
    assertThat(CheckKind.of(value("found", "25", "56.2", "43.7")))
        .isEqualTo(CheckKind.PLAUSIBILITY);
    assertThat(CheckKind.of(value("common practice", "2", "2", "0.1")))
        .isEqualTo(CheckKind.PLAUSIBILITY);
    // Half a unit of a one-digit number is rounding, however large a part of it.
    assertThat(CheckKind.of(value("found", "3", "2.7", "0.5"))).isEqualTo(CheckKind.PUBLISHED);
  }

  @Test
  void tolerancesHaveReasons() {
    assertThat(CheckKind.reason(value("found", "3.63", "3.63", "0.005")))
        .isEqualTo("rounding of the last printed digit");
    assertThat(CheckKind.reason(value("found", "3.63", "3.63", "0.05")))
        .isEqualTo("wider than rounding: 10 half units of the last digit, 1.4 %");
    assertThat(CheckKind.reason(value("derived", "3.63", "3.63", "1e-9")))
        .isEqualTo("arithmetic alone");
    assertThat(CheckKind.reason(value("found", "3", "3", "0"))).isEqualTo("none: must be equal");
  }

  @Test
  void readsWhatTheTestsWrite() {
    assertThat(value("found", "1.5", "1.49", "0.02").holds()).isTrue();
    assertThat(value("found", "1.5", "1.4", "0.02").holds()).isFalse();
    assertThatThrownBy(() -> CheckedValue.parse("a\tb")).hasMessageContaining("given 2 fields");
  }

  @Test
  void aMissedValueIsShownAsMissed() {
    String html =
        ReferencePage.html(
            List.of(value("found", "1.5", "1.4", "0.02")), Map.of(), (test, type) -> false);
    assertThat(html).contains(">missed<").contains("source").contains("-0.1");
  }

  @Test
  void aCalculationWithoutAComparisonSaysNone() {
    List<CheckedValue> values = List.of(value("found", "1.5", "1.49", "0.02"));
    String html =
        ReferencePage.html(
            values,
            Map.of("m.p.reach", "Mitre", "m.p.cap", "Cap"),
            (test, type) -> test.equals("MitreTest") && type.equals("Mitre"));
    assertThat(html)
        .containsPattern(Pattern.quote("m.p.cap</td><td class=\"t\">none</td><td class=\"n\">1"))
        .containsPattern(
            Pattern.quote("m.p.reach</td><td class=\"t\">at most 1</td><td class=\"n\">1"))
        .contains("1 of 2 published calculations have no comparison");
  }

  @Test
  void aComparisonThatNamesACalculationCountsForIt() {
    CheckedValue named =
        CheckedValue.parse("m.p.reach\tcase\tsource\tfound\t1.5\t1.49\t0.02\tOtherTest");
    String html =
        ReferencePage.html(
            List.of(value("found", "1.5", "1.49", "0.02"), named),
            Map.of("m.p.reach", "Mitre", "m.p.cap", "Cap"),
            (test, type) -> false);
    assertThat(html)
        .containsPattern(Pattern.quote("m.p.reach</td><td class=\"t\">1</td><td class=\"n\">2"))
        .containsPattern(Pattern.quote("m.p.cap</td><td class=\"t\">none</td><td class=\"n\">2"));
  }

  @Test
  void findsThePublishedCalculations() {
    assertThat(PublishedCalculations.all())
        .hasSizeGreaterThan(50)
        .containsEntry("geometry.pattern.mitre", "io.github.seamstead.geometry.pattern.Mitre");
  }

  @Test
  void seesWhatATestUses() {
    String itself = ReferencePageTest.class.getName();
    assertThat(ReferenceFiles.uses(PROJECT, itself, CheckKind.class.getName())).isTrue();
    assertThat(ReferenceFiles.uses(PROJECT, itself, "io.github.seamstead.examples.reference.Check"))
        .isFalse();
    assertThat(ReferenceFiles.uses(PROJECT, "no.such.Test", CheckKind.class.getName())).isFalse();
  }
}
