package io.github.seamstead.materials.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ThinnerLayerTest {

  @Test
  void aPackLosesACentimetreAndKeepsThree() {
    assertThat(ThinnerLayer.pack(0.05).orElseThrow()).isCloseTo(0.04, within(1e-12));
    assertThat(ThinnerLayer.pack(0.041)).isPresent();
    assertThat(ThinnerLayer.pack(0.039)).isEmpty();
    assertThat(ThinnerLayer.pack(0)).isEmpty();
  }

  @Test
  void aCoatKeepsThreeGrainsOnEachOther() {
    assertThat(ThinnerLayer.coat(0.02, 0.002).orElseThrow()).isCloseTo(0.015, within(1e-12));
    assertThat(ThinnerLayer.coat(0.02, 0.0051)).as("three grains are 15.3 mm").isEmpty();
    assertThat(ThinnerLayer.coat(0.0149, 0.001)).as("9.9 mm").isEmpty();
    assertThat(ThinnerLayer.coat(0.0151, 0.001)).isPresent();
  }
}
