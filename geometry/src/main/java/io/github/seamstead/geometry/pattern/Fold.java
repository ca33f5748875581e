package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A hip within a piece that goes over several faces: there the cloth is bent over the pole, neither
 * cut nor sewn.
 *
 * @param ordinal which of the piece's folds, counted from 1, from left to right as first drawn; it
 *     lies between that face of the piece and the next
 * @param name what it is called; not blank
 * @param lower its foot on the lower edge, in metres in the piece's coordinates
 * @param upper its end at the top, in metres
 */
public record Fold(int ordinal, String name, Vector2D lower, Vector2D upper) {

  public Fold {
    Args.within("fold number", ordinal, 1, Integer.MAX_VALUE);
    Args.notBlank("fold name", name);
  }

  /**
   * Calls a fold by its place.
   *
   * @param ordinal which of the piece's folds, counted from 1
   * @return for example {@code fold 1}
   */
  public static String byPlace(int ordinal) {
    return "fold " + ordinal;
  }

  /**
   * Gives the length of the hip on the cloth.
   *
   * @return from foot to top, in metres
   */
  public double length() {
    return lower.distance(upper);
  }
}
