package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;

/**
 * How a face that is larger than the cloth is put together from parts.
 *
 * <p>A horizontal splice laps the upper part over the lower, so that it sheds water: the upper part
 * ends on the splice line, the lower one goes on under it by the lap. An upright splice laps the
 * right part over the left. The sizes are those of the cloth as measured: reclaimed sheets are
 * seldom their nominal size.
 *
 * @param maxWidth widest piece that can be cut, along the face's base, in metres, greater than 0
 * @param maxHeight highest piece that can be cut, up the face, in metres, greater than 0
 * @param lap cloth under a splice, in metres, greater than 0; greater than 0 and less than half of
 *     either size
 * @param stagger by how much the splices of neighbouring panels are kept apart, in metres, 0 or
 *     more; 0 or more and less than a sixth of the height less the lap
 * @param steps by how many staggers this panel's first splice is lower than it would be: 0, 1 or 2
 */
public record SpliceRule(double maxWidth, double maxHeight, double lap, double stagger, int steps) {

  private static final int MOST_STEPS = 2;

  public SpliceRule {
    Args.positive("cloth width", maxWidth, "m");
    Args.positive("cloth height", maxHeight, "m");
    Args.between("splice lap", lap, 0, Math.min(maxWidth, maxHeight) / 2, "m");
    Args.require(
        stagger >= 0 && stagger < (maxHeight - lap) / 6,
        "splice stagger",
        Numbers.plain(stagger) + " m",
        "must be 0 m or more and less than a sixth of the cloth's height less the lap, "
            + Numbers.fixed((maxHeight - lap) / 6, 3)
            + " m");
    Args.within("splice steps", steps, 0, MOST_STEPS);
  }

  /**
   * Splices without regard to the neighbours.
   *
   * @param maxWidth widest piece, along the base, in metres, greater than 0
   * @param maxHeight highest piece, up the face, in metres, greater than 0
   * @param lap cloth under a splice, in metres, greater than 0
   * @return the rule
   * @throws IllegalArgumentException if a size is out of range
   */
  public static SpliceRule of(double maxWidth, double maxHeight, double lap) {
    return new SpliceRule(maxWidth, maxHeight, lap, 0, 0);
  }

  /**
   * Gives the rule for one face of a ring so that no two neighbours splice at the same height: even
   * faces are shifted by one stagger and, where the number of faces is odd, the last one, which has
   * the unshifted first one as its neighbour, by two.
   *
   * @param face the face's number, 1 to {@code faces}
   * @param faces the number of faces, 3 or more
   * @param apart between the splices of neighbours, in metres, 0 or more and less than a sixth of
   *     the cloth's height less the lap
   * @return the rule with the face's stagger
   * @throws IllegalArgumentException if a number is out of range
   */
  public SpliceRule staggered(int face, int faces, double apart) {
    Args.within("faces", faces, 3, Integer.MAX_VALUE);
    Args.within("face", face, 1, faces);
    int lower = face % 2 == 0 ? 1 : face == faces ? 2 : 0;
    return new SpliceRule(maxWidth, maxHeight, lap, apart, lower);
  }

  /** By how much the first splice is lower than it would be, in metres. */
  double shift() {
    return stagger * steps;
  }

  /** What the lowest of all panels must be able to give up, so that all are divided alike. */
  double greatestShift() {
    return stagger * MOST_STEPS;
  }
}
