package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.work.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Invented frames, bent as real ones are, and readings of them with or without error. */
public final class TestFrames {

  private TestFrames() {}

  /** A regular frame whose nodes are each pushed about by up to {@code bend} metres. */
  public static Map<Node, Vector3D> bent(
      int sides, boolean truncated, double radius, double height, double bend, long seed) {
    RandomGenerator random = Seeds.stream(seed, "bend", 0);
    Map<Node, Vector3D> nodes = new TreeMap<>();
    for (int i = 1; i <= sides; i++) {
      double turn = 2 * Math.PI * i / sides;
      nodes.put(
          Node.base(i),
          Vector3D.of(radius * Math.cos(turn), radius * Math.sin(turn), 0).add(push(random, bend)));
      if (truncated) {
        double r = radius * 0.2;
        nodes.put(
            Node.opening(i),
            Vector3D.of(r * Math.cos(turn), r * Math.sin(turn), height * 0.8)
                .add(push(random, bend)));
      }
    }
    if (!truncated) {
      nodes.put(Node.APEX, Vector3D.of(0, 0, height).add(push(random, bend)));
    }
    nodes.put(Node.CENTRE, Vector3D.of(0, 0, 0).add(push(random, bend)));
    return nodes;
  }

  private static Vector3D push(RandomGenerator random, double bend) {
    return Vector3D.of(
        bend * (2 * random.nextDouble() - 1),
        bend * (2 * random.nextDouble() - 1),
        bend * (2 * random.nextDouble() - 1));
  }

  public static SurveyShape shape(int sides, boolean truncated) {
    return truncated ? SurveyShape.truncated(sides) : SurveyShape.whole(sides);
  }

  /** Pairs that a crew would tape: sides, hips, spokes, next-but-one chords, levels of the base. */
  public static List<Reading> readings(
      Map<Node, Vector3D> nodes, int sides, boolean truncated, double noise, long seed) {
    List<Node[]> pairs = new ArrayList<>();
    SurveyShape shape = shape(sides, truncated);
    for (int i = 1; i <= sides; i++) {
      pairs.add(new Node[] {shape.baseCorner(i), shape.baseCorner(i + 1)});
      pairs.add(new Node[] {shape.baseCorner(i), shape.hipTop(i)});
      pairs.add(new Node[] {shape.baseCorner(i), Node.CENTRE});
      if (sides > 4) {
        pairs.add(new Node[] {shape.baseCorner(i), shape.baseCorner(i + 2)});
      }
      if (truncated) {
        pairs.add(new Node[] {shape.hipTop(i), shape.hipTop(i + 1)});
        pairs.add(new Node[] {shape.baseCorner(i), shape.hipTop(i + 1)});
        pairs.add(new Node[] {Node.CENTRE, shape.hipTop(i)});
      }
    }
    RandomGenerator random = Seeds.stream(seed, "noise", 0);
    List<Reading> readings = new ArrayList<>();
    for (Node[] pair : pairs) {
      double exact = nodes.get(pair[0]).distance(nodes.get(pair[1]));
      double read = exact + noise * random.nextGaussian();
      readings.add(Reading.distance(pair[0], pair[1], read, Math.max(noise, 1e-3)));
    }
    for (int i = 2; i <= sides; i++) {
      readings.add(level(nodes, Node.base(1), Node.base(i), noise * random.nextGaussian(), noise));
    }
    readings.add(level(nodes, Node.base(1), Node.CENTRE, noise * random.nextGaussian(), noise));
    return readings;
  }

  public static Reading level(
      Map<Node, Vector3D> nodes, Node from, Node to, double error, double noise) {
    double exact = nodes.get(to).getZ() - nodes.get(from).getZ();
    return new Reading.HeightDifference(from, to, exact + error, Math.max(noise, 1e-3), "");
  }

  public static Survey survey(int sides, boolean truncated, double bend, double noise, long seed) {
    Map<Node, Vector3D> nodes = bent(sides, truncated, 3, 3.5, bend, seed);
    return Survey.of(shape(sides, truncated), readings(nodes, sides, truncated, noise, seed));
  }
}
