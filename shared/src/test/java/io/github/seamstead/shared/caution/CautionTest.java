package io.github.seamstead.shared.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.shared.source.Source;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CautionTest {

  @Test
  void alwaysDefersToThoseWhoDecide() {
    Caution caution =
        Caution.of(Hazard.LIFTING, "Heavy.", "23 kg.", Source.commonPractice("a limit"));
    assertThat(caution.text())
        .isEqualTo("Heavy. 23 kg. (a limit [common practice]) " + Caution.DEFERENCE);
  }

  @Test
  void needsRiskAndLimit() {
    assertThatThrownBy(() -> new Caution(Hazard.WIND, "", "x", Optional.empty()))
        .hasMessageContaining("risk");
    assertThatThrownBy(() -> new Caution(Hazard.WIND, "x", "", Optional.empty()))
        .hasMessageContaining("limit");
  }
}
