package io.github.seamstead.geometry.survey;

import java.util.List;
import java.util.Map;

/**
 * Readings as functions of coordinates. Every node has three coordinates, of which some may be held
 * fixed; the others are the unknowns.
 */
final class NetworkModel implements ObservationModel {

  private final List<Reading> readings;
  private final double[][] given;
  private final int[][] unknown;
  private final int unknowns;
  private final int[][] ends;

  /**
   * Builds a network.
   *
   * @param nodes the place of each node in {@code coordinates}
   * @param coordinates approximate or held coordinates, three per node, in metres
   * @param held which coordinates are held, three per node
   */
  NetworkModel(
      Map<Node, Integer> nodes,
      double[][] coordinates,
      boolean[][] held,
      List<? extends Reading> readings) {
    this.readings = List.copyOf(readings);
    this.given = coordinates;
    this.unknown = new int[coordinates.length][3];
    int count = 0;
    for (int i = 0; i < coordinates.length; i++) {
      for (int axis = 0; axis < 3; axis++) {
        unknown[i][axis] = held[i][axis] ? -1 : count++;
      }
    }
    this.unknowns = count;
    this.ends = new int[readings.size()][];
    for (int i = 0; i < ends.length; i++) {
      ends[i] = this.readings.get(i).nodes().stream().mapToInt(nodes::get).toArray();
    }
  }

  @Override
  public int unknowns() {
    return unknowns;
  }

  @Override
  public int observations() {
    return readings.size();
  }

  @Override
  public int mostPerObservation() {
    return 9;
  }

  @Override
  public double[] start() {
    double[] start = new double[unknowns];
    for (int i = 0; i < given.length; i++) {
      for (int axis = 0; axis < 3; axis++) {
        if (unknown[i][axis] >= 0) {
          start[unknown[i][axis]] = given[i][axis];
        }
      }
    }
    return start;
  }

  /**
   * The start, made larger or smaller about its middle until it is of the frame's size. The best
   * fit by shifts and turns does not depend on that size, but steps towards it settle only if the
   * sizes are about the same.
   */
  @Override
  public double[] datum(double[] x) {
    if (unknowns < 3 * given.length) {
      return start();
    }
    double[] start = start();
    double[] middle = middle(start);
    double[] ownMiddle = middle(x);
    double shared = 0;
    double square = 0;
    for (int i = 0; i < unknowns; i++) {
      double d = start[i] - middle[i % 3];
      shared += d * (x[i] - ownMiddle[i % 3]);
      square += d * d;
    }
    // A start without size, or one that lies the wrong way round, is taken as it is.
    double size = square > 0 && shared > 0 ? shared / square : 1;
    for (int i = 0; i < unknowns; i++) {
      start[i] = middle[i % 3] + size * (start[i] - middle[i % 3]);
    }
    return start;
  }

  private static double[] middle(double[] x) {
    double[] middle = new double[3];
    for (int i = 0; i < x.length; i++) {
      middle[i % 3] += 3 * x[i] / x.length;
    }
    return middle;
  }

  @Override
  public double weight(int observation) {
    double u = readings.get(observation).standardUncertainty();
    return 1 / (u * u);
  }

  @Override
  public double evaluate(int observation, double[] x, DesignRow row) {
    Reading reading = readings.get(observation);
    return reading.value() - computed(reading, ends[observation], x, row);
  }

  /** Computes a quantity between nodes (by their places) and its derivatives. */
  double computed(Reading reading, int[] at, double[] x, DesignRow row) {
    row.clear();
    if (reading instanceof Reading.Distance) {
      return distance(at[0], at[1], 3, x, row);
    }
    if (reading instanceof Reading.LevelDistance) {
      return distance(at[0], at[1], 2, x, row);
    }
    if (reading instanceof Reading.HeightDifference) {
      row.add(unknown[at[0]][2], -1);
      row.add(unknown[at[1]][2], 1);
      return coordinate(at[1], 2, x) - coordinate(at[0], 2, x);
    }
    return plumb(at[0], at[1], at[2], x, row);
  }

  double distance(int from, int to, int axes, double[] x, DesignRow row) {
    double[] difference = new double[axes];
    double square = 0;
    for (int axis = 0; axis < axes; axis++) {
      difference[axis] = coordinate(to, axis, x) - coordinate(from, axis, x);
      square += difference[axis] * difference[axis];
    }
    double length = Math.sqrt(square);
    for (int axis = 0; axis < axes; axis++) {
      // Where the ends meet there is no direction; zero leaves it to the other readings.
      double cosine = length > 0 ? difference[axis] / length : 0;
      row.add(unknown[from][axis], -cosine);
      row.add(unknown[to][axis], cosine);
    }
    return length;
  }

  /** Of a distance d with direction e: {@code (I - e e') / d} between the ends, signs as in d². */
  @Override
  public void addCurvature(int observation, double[] x, double factor, double[][] lower) {
    Reading reading = readings.get(observation);
    boolean straight = reading instanceof Reading.Distance;
    if (!straight && !(reading instanceof Reading.LevelDistance)) {
      return; // heights are linear; plumb offsets nearly so
    }
    int[] at = ends[observation];
    int axes = straight ? 3 : 2;
    DesignRow row = new DesignRow(6);
    double length = distance(at[0], at[1], axes, x, row);
    if (!(length > 0)) {
      return;
    }
    double[] e = new double[axes];
    for (int i = 0; i < axes; i++) {
      e[i] = (coordinate(at[1], i, x) - coordinate(at[0], i, x)) / length;
    }
    for (int end = 0; end < 2; end++) {
      for (int other = 0; other < 2; other++) {
        double signed = (end == other ? factor : -factor) / length;
        for (int i = 0; i < axes; i++) {
          for (int j = 0; j < axes; j++) {
            int r = unknown[at[end]][i];
            int c = unknown[at[other]][j];
            if (c >= 0 && c <= r) {
              lower[r][c] += signed * ((i == j ? 1 : 0) - e[i] * e[j]);
            }
          }
        }
      }
    }
  }

  private double plumb(int hung, int mark, int towards, double[] x, DesignRow row) {
    double[] p = new double[2];
    double[] q = new double[2];
    for (int axis = 0; axis < 2; axis++) {
      p[axis] = coordinate(hung, axis, x) - coordinate(mark, axis, x);
      q[axis] = coordinate(towards, axis, x) - coordinate(mark, axis, x);
    }
    double length = StrictMath.hypot(q[0], q[1]);
    if (!(length > 0)) {
      return 0;
    }
    double offset = (p[0] * q[0] + p[1] * q[1]) / length;
    for (int axis = 0; axis < 2; axis++) {
      double along = q[axis] / length;
      double turning = (p[axis] - offset * along) / length;
      row.add(unknown[hung][axis], along);
      row.add(unknown[towards][axis], turning);
      row.add(unknown[mark][axis], -along - turning);
    }
    return offset;
  }

  double coordinate(int node, int axis, double[] x) {
    int i = unknown[node][axis];
    return i < 0 ? given[node][axis] : x[i];
  }

  int unknown(int node, int axis) {
    return unknown[node][axis];
  }

  double[] given(int node) {
    return given[node].clone();
  }

  int nodes() {
    return given.length;
  }

  @Override
  public double[][] freeMotions(double[] x) {
    return FreeMotions.of(this, x);
  }
}
