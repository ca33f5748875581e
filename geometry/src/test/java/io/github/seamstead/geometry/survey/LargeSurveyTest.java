package io.github.seamstead.geometry.survey;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LargeSurveyTest {
  @Test
  void timing() {
    for (int i = 0; i < 5; i++) {
      Survey s = TestFrames.survey(64, true, 0.02, 0.002, i);
      long t = System.nanoTime();
      Adjustment a = s.adjust().orThrow();
      long t1 = System.nanoTime();
      a.nextReadings(3);
      long t2 = System.nanoTime();
      System.out.println(
          s.readings().size()
              + " "
              + (t1 - t) / 1e6
              + " ms, steps "
              + a.steps()
              + " next "
              + (t2 - t1) / 1e6
              + " s0 "
              + a.globalTest());
      assertThat(a.steps()).isLessThan(10);
    }
  }
}
