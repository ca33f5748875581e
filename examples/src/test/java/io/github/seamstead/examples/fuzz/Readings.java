package io.github.seamstead.examples.fuzz;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/** Surveys of a truncated frame of which far more is taped than anybody would. */
final class Readings {

  private static final double SIDE = 0.6;
  private static final double HEIGHT = 4;
  private static final double SCALE = 0.2;

  private Readings() {}

  /** Tapes a number of distances between all corners, every so many of them wrong. */
  static ObjectNode all(int sides, int count, int everyWrong) {
    ObjectNode job = JsonNodeFactory.instance.objectNode().put("seamstead", 1);
    ObjectNode frame = job.putObject("frame").put("sides", sides);
    frame.putObject("measures").put("baseSide", SIDE + " m").put("height", HEIGHT + " m");
    double radius = SIDE / (2 * Math.sin(Math.PI / sides));
    frame.putObject("opening").put("radius", metres(radius * SCALE));
    ArrayNode distances = frame.putObject("survey").putArray("distances");
    List<int[]> pairs = pairs(2 * sides, new SplittableRandom(1));
    SplittableRandom errors = new SplittableRandom(2);
    for (int i = 0; i < Math.min(count, pairs.size()); i++) {
      int[] pair = pairs.get(i);
      double[] a = corner(pair[0], sides, radius);
      double[] b = corner(pair[1], sides, radius);
      double taped = Math.hypot(Math.hypot(a[0] - b[0], a[1] - b[1]), a[2] - b[2]);
      taped += 0.003 * errors.nextDouble(-1, 1) + (i % everyWrong == 0 ? 0.7 : 0);
      distances
          .addObject()
          .put("from", name(pair[0], sides))
          .put("to", name(pair[1], sides))
          .put("distance", metres(taped));
    }
    return job;
  }

  private static List<int[]> pairs(int corners, SplittableRandom random) {
    List<int[]> pairs = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      for (int j = 0; j < i; j++) {
        pairs.add(random.nextInt(pairs.size() + 1), new int[] {i, j});
      }
    }
    return pairs;
  }

  private static String name(int corner, int sides) {
    return corner < sides ? "B" + (corner + 1) : "T" + (corner - sides + 1);
  }

  private static double[] corner(int corner, int sides, double radius) {
    double angle = 2 * Math.PI * (corner % sides) / sides;
    double scale = corner < sides ? 1 : SCALE;
    return new double[] {
      scale * radius * Math.cos(angle), scale * radius * Math.sin(angle), HEIGHT * (1 - scale)
    };
  }

  private static String metres(double value) {
    return String.format(Locale.ROOT, "%.4f m", value);
  }
}
