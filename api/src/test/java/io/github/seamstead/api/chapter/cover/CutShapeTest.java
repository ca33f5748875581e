package io.github.seamstead.api.chapter.cover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CutShapeTest {

  @Test
  void runsOfNumbersAreShortened() {
    assertThat(CutShape.runs(List.of("2", "3", "4", "5"))).isEqualTo("2–5");
    assertThat(CutShape.runs(List.of("1", "4", "5"))).isEqualTo("1, 4, 5");
    assertThat(CutShape.runs(List.of("1", "2", "5", "6", "7", "9"))).isEqualTo("1, 2, 5–7, 9");
    assertThat(CutShape.runs(List.of("1 door flap"))).isEqualTo("1 door flap");
    assertThat(CutShape.runs(List.of("cap", "skirt", "skirt", "skirt")))
        .isEqualTo("cap, 3 × skirt");
  }
}
