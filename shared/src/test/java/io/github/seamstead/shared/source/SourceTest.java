package io.github.seamstead.shared.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class SourceTest {

  @Test
  void citesOnOneLine() {
    assertThat(Source.fromMemory("ASTM", "D2487", "2017", "fig. 4").citation())
        .isEqualTo("ASTM, D2487 (2017), fig. 4 [from memory]");
    assertThat(Source.commonPractice("dry pack about 50 mm").citation())
        .isEqualTo("dry pack about 50 mm [common practice]");
    assertThat(Source.found("A", "B", "", "").at("p. 3").citation())
        .isEqualTo("A, B, p. 3 [found]");
  }

  @Test
  void needsATitle() {
    assertThatThrownBy(() -> Source.derived(" ")).hasMessageContaining("title");
  }
}
