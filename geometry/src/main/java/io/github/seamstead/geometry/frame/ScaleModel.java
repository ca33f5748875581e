package io.github.seamstead.geometry.frame;

/** A frame that stands on a table, as a model of a shelter. */
public final class ScaleModel {

  /**
   * Across corners, in metres: a narrower frame is a model, for nobody can sit in it (common
   * practice).
   */
  public static final double LEAST_SHELTER = 1.2;

  /** How many times larger the shelter is that a model on a table stands for (common practice). */
  public static final int SCALE = 10;

  private ScaleModel() {}

  /**
   * Tells whether a frame is a model that stands on a table.
   *
   * @param frame the measures of the frame
   * @return true if it is narrower across corners than {@value #LEAST_SHELTER} m
   */
  public static boolean isOne(FrameMeasures frame) {
    return frame.acrossCorners() < LEAST_SHELTER;
  }

  /**
   * Measures the shelter that a model stands for.
   *
   * @param model the measures of the model
   * @return the measures of the pyramid with every length {@value #SCALE} times as great
   */
  public static FrameMeasures fullSize(FrameMeasures model) {
    RegularPyramid pyramid = model.pyramid();
    return new RegularPyramid(
            pyramid.sides(),
            SCALE * pyramid.baseSide(),
            SCALE * pyramid.apexHeight(),
            SCALE * pyramid.openingSide())
        .measures();
  }
}
