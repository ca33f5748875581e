package io.github.seamstead.examples.lessons;

import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.RegularPyramid;

/** The shelter of all lessons: ten times the class model that the demo job builds in cardboard. */
final class Shelter {

  static final int SIDES = 5;

  /** Side of the base, in metres. */
  static final double SIDE = 2.4;

  /** Height of the tip, in metres. */
  static final double HEIGHT = 3.1;

  /** The model is one to ten. */
  static final double SCALE = 10;

  private Shelter() {}

  static FrameMeasures measures() {
    return RegularPyramid.ofBaseSideAndHeight(SIDES, SIDE, HEIGHT).measures();
  }

  /** A length of the shelter in the model, in whole millimetres. */
  static long modelMillimetres(double metres) {
    return Math.round(metres * 1000 / SCALE);
  }
}
