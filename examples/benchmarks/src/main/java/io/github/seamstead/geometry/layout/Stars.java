package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Outlines to measure with: corners all round at random distances, mostly not convex. */
final class Stars {

  private Stars() {}

  static Outline star(RandomGenerator random, int corners, double least, double most) {
    List<Vector2D> v = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + 0.7 * random.nextDouble()) / corners;
      double r = least + (most - least) * random.nextDouble();
      v.add(Vector2D.of(r * Math.cos(angle), r * Math.sin(angle)));
    }
    return new Outline(v);
  }
}
