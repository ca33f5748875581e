package io.github.seamstead.api.chapter.internal;

import io.github.seamstead.shared.plane.Outline;
import java.util.List;

/** The corners of an outline, as drawings and as results take them. */
public final class Corners {

  private Corners() {}

  /** Gives the corners for a drawing, in metres. */
  public static List<double[]> drawn(Outline outline) {
    return outline.vertices().stream().map(v -> new double[] {v.getX(), v.getY()}).toList();
  }

  /** Gives the corners as data, in metres. */
  public static List<List<Double>> data(Outline outline) {
    return outline.vertices().stream().map(v -> List.of(v.getX(), v.getY())).toList();
  }
}
