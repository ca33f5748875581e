package io.github.seamstead.benchmarks;

import io.github.seamstead.geometry.layout.Piece;
import io.github.seamstead.geometry.layout.Rotations;
import io.github.seamstead.geometry.layout.StripProblem;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Strip problems drawn from a seed, on which the constants of the search are chosen. None of them
 * is published, so that what is reported on published ones is not what the search was tuned on.
 */
public final class InventedStrips {

  private static final double HALF_TURN = Math.PI;

  private InventedStrips() {}

  /**
   * The problems: a few and many garment-like parts, stars, steps, hooks, and a rectangle cut up.
   *
   * @param seed of all of them
   * @return by name, in a fixed order
   */
  public static Map<String, StripProblem> of(long seed) {
    Map<String, StripProblem> out = new LinkedHashMap<>();
    out.put("sleeves", StripProblem.of(1.2, garment(new SplittableRandom(seed), 5, 4, 6)));
    out.put("smocks", StripProblem.of(1.5, garment(new SplittableRandom(seed + 1), 9, 3, 8)));
    out.put("stars", StripProblem.of(1, stars(new SplittableRandom(seed + 2), 9, 4)));
    out.put("steps", StripProblem.of(1, steps(new SplittableRandom(seed + 3), 8, 4)));
    out.put("hooks", StripProblem.of(1, hooks(new SplittableRandom(seed + 4), 6, 5)));
    out.put("slabs", StripProblem.of(1, cutUp(new SplittableRandom(seed + 5), 18)));
    return out;
  }

  private static Piece piece(String id, List<Vector2D> corners, int count, double... turns) {
    return Piece.of(id, new Outline(corners)).withCount(count).withRotations(Rotations.of(turns));
  }

  /** Long parts with bowed sides, and small ones that fill what they leave; half turns alone. */
  private static List<Piece> garment(SplittableRandom random, int large, int copies, int small) {
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k < large + small; k++) {
      boolean isLarge = k < large;
      double length = isLarge ? 0.4 + 0.5 * random.nextDouble() : 0.08 + 0.2 * random.nextDouble();
      double width = length * (isLarge ? 0.3 + 0.35 * random.nextDouble() : 0.4);
      double taper = 0.45 + 0.5 * random.nextDouble();
      double bow = 0.25 * (random.nextDouble() - 0.6);
      double lean = 0.2 * (random.nextDouble() - 0.5);
      List<Vector2D> corners = new ArrayList<>();
      for (int i = 0; i <= 6; i++) {
        corners.add(side(i / 6.0, -1, length, width, taper, bow, lean));
      }
      for (int i = 6; i >= 0; i--) {
        corners.add(side(i / 6.0, 1, length, width, taper, bow, lean));
      }
      pieces.add(piece("part" + k, corners, isLarge ? copies : 2 * copies, 0, HALF_TURN));
    }
    return pieces;
  }

  private static Vector2D side(
      double part, int sign, double length, double width, double taper, double bow, double lean) {
    double half = width / 2 * (1 + (taper - 1) * part + bow * 4 * part * (1 - part));
    return Vector2D.of(length * part, sign * half + lean * length * part * part);
  }

  /** Star-shaped polygons of five to ten corners, in quarter turns. */
  private static List<Piece> stars(SplittableRandom random, int kinds, int copies) {
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k < kinds; k++) {
      int corners = 5 + random.nextInt(6);
      double size = 0.08 + 0.14 * random.nextDouble();
      List<Vector2D> at =
          IntStream.range(0, corners)
              .mapToObj(
                  i -> {
                    double r = size * (0.35 + 0.65 * random.nextDouble());
                    double a = 2 * Math.PI * i / corners;
                    return Vector2D.of(r * StrictMath.cos(a), r * StrictMath.sin(a));
                  })
              .toList();
      double quarter = Math.PI / 2;
      pieces.add(piece("star" + k, at, copies, 0, quarter, HALF_TURN, 3 * quarter));
    }
    return pieces;
  }

  /** Stairs of two or three steps, in quarter turns. */
  private static List<Piece> steps(SplittableRandom random, int kinds, int copies) {
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k < kinds; k++) {
      int treads = 2 + random.nextInt(2);
      List<Vector2D> corners = new ArrayList<>();
      corners.add(Vector2D.of(0, 0));
      double x = 0.04 * (3 + random.nextInt(5));
      double y = 0;
      corners.add(Vector2D.of(x, 0));
      for (int t = 0; t < treads; t++) {
        y += 0.04 * (1 + random.nextInt(4));
        corners.add(Vector2D.of(x, y));
        x = t + 1 == treads ? 0 : x * (0.4 + 0.4 * random.nextDouble());
        corners.add(Vector2D.of(x, y));
      }
      double quarter = Math.PI / 2;
      pieces.add(piece("stair" + k, corners, copies, 0, quarter, HALF_TURN, 3 * quarter));
    }
    return pieces;
  }

  /** Angles with arms of unlike length that hook into one another, in half turns. */
  private static List<Piece> hooks(SplittableRandom random, int kinds, int copies) {
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k < kinds; k++) {
      double a = 0.15 + 0.2 * random.nextDouble();
      double b = 0.1 + 0.2 * random.nextDouble();
      double s = 0.04 + 0.05 * random.nextDouble();
      double t = 0.04 + 0.05 * random.nextDouble();
      double slant = 0.05 * random.nextDouble();
      List<Vector2D> corners =
          List.of(
              Vector2D.of(0, 0),
              Vector2D.of(a, slant),
              Vector2D.of(a, slant + t),
              Vector2D.of(s + slant, t),
              Vector2D.of(s, b),
              Vector2D.of(0, b));
      pieces.add(piece("hook" + k, corners, copies, 0, HALF_TURN));
    }
    return pieces;
  }

  /** A rectangle two long and one wide, cut along random lines: no waste at all is possible. */
  private static List<Piece> cutUp(SplittableRandom random, int parts) {
    List<List<Vector2D>> convex = new ArrayList<>();
    convex.add(List.of(Vector2D.of(0, 0), Vector2D.of(2, 0), Vector2D.of(2, 1), Vector2D.of(0, 1)));
    while (convex.size() < parts) {
      int largest = 0;
      for (int i = 1; i < convex.size(); i++) {
        largest = area(convex.get(i)) > area(convex.get(largest)) ? i : largest;
      }
      List<Vector2D> whole = convex.remove(largest);
      int n = whole.size();
      int from = random.nextInt(n);
      int to = (from + n / 2) % n;
      double p = 0.3 + 0.4 * random.nextDouble();
      double q = 0.3 + 0.4 * random.nextDouble();
      Vector2D a = whole.get(from).lerp(whole.get((from + 1) % n), p);
      Vector2D b = whole.get(to).lerp(whole.get((to + 1) % n), q);
      convex.add(between(whole, from, to, a, b));
      convex.add(between(whole, to, from, b, a));
    }
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k < convex.size(); k++) {
      pieces.add(piece("slab" + k, convex.get(k), 1, 0));
    }
    return pieces;
  }

  private static List<Vector2D> between(
      List<Vector2D> whole, int from, int to, Vector2D first, Vector2D last) {
    List<Vector2D> out = new ArrayList<>();
    out.add(first);
    for (int i = (from + 1) % whole.size(); i != (to + 1) % whole.size(); ) {
      out.add(whole.get(i));
      i = (i + 1) % whole.size();
    }
    out.add(last);
    return out;
  }

  private static double area(List<Vector2D> corners) {
    return new Outline(corners).area();
  }
}
