package io.github.seamstead.examples.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReferencePageTest {

  private static final Path PROJECT = Path.of("..");
  private static final int LEAST_CHECKS = 60;

  @Test
  void thePageHoldsEveryCheckThatTheModulesMade() throws IOException {
    for (String module : List.of("shared", "geometry", "materials", "assembly")) {
      assumeTrue(
          Files.isDirectory(PROJECT.resolve(module).resolve("target/outside-checks")),
          "skipped: the tests of " + module + " did not run before these");
    }
    List<CheckedValue> values = ReferencePage.read(PROJECT);
    assertThat(values).hasSizeGreaterThanOrEqualTo(LEAST_CHECKS).allMatch(CheckedValue::holds);
    String html = ReferencePage.html(values);
    assertThat(html).doesNotContain("NaN");
    Files.writeString(Path.of("target", "reference.html"), html);
  }

  @Test
  void readsWhatTheTestsWrite() {
    CheckedValue value = CheckedValue.parse("a.b\tcase\tsource [found]\tfound\t1.5\t1.49\t0.02");
    assertThat(value.holds()).isTrue();
    assertThat(CheckedValue.parse("a\tb\tc\td\t1.5\t1.4\t0.02").holds()).isFalse();
    assertThatThrownBy(() -> CheckedValue.parse("a\tb")).hasMessageContaining("given 2 fields");
  }

  @Test
  void namesCaseSourceAndDifference() {
    CheckedValue value = CheckedValue.parse("a.b\tcase\tsource [found]\tfound\t1.5\t1.49\t0.02");
    assertThat(ReferencePage.html(List.of(value)))
        .contains("a.b")
        .contains("case")
        .contains("source [found]")
        .contains("-0.01");
  }
}
