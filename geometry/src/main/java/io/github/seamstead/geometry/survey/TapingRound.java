package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The readings to take of a frame, in an order that needs the ladder least: everything that is read
 * standing on the ground first, then all readings from one stand of the ladder before it is moved.
 *
 * <p>The readings are those from which every corner is found more than once: base sides, distances
 * across the base (of a triangle its sides again), hips, both diagonals of each face, the opening's
 * sides and distances across it, and levels. The cost is linear in the number of sides. Which
 * readings are enough follows from the adjustment itself: {@link Survey#findBlunders()} on them
 * reports each as controlled.
 *
 * @param stands where the person with the tape's upper end stands, in the order of the work; one or
 *     more
 */
public record TapingRound(List<Stand> stands) {

  /** Sideways reach from a ladder without leaning out, in metres: common practice. */
  public static final double LADDER_REACH = 0.7;

  /** What is read. */
  public enum Quantity {
    /** A taped distance. */
    DISTANCE,
    /** How much higher the second node is, by a water hose or a level. */
    RISE
  }

  /**
   * One reading to take.
   *
   * @param quantity what is read
   * @param from the node where the tape starts, or from which the rise counts
   * @param to the other node
   * @param wanted what the regular frame would give, in metres
   */
  public record Wanted(Quantity quantity, Node from, Node to, double wanted) {

    /**
     * Makes the reading of this kind that a value gives.
     *
     * @param metres the value read, in metres
     * @param standardUncertainty in metres, greater than 0
     * @return the reading
     * @throws IllegalArgumentException if a value is out of range
     */
    public Reading reading(double metres, double standardUncertainty) {
      String text = Numbers.plain(metres) + " m";
      return quantity == Quantity.DISTANCE
          ? new Reading.Distance(from, to, metres, standardUncertainty, text)
          : new Reading.HeightDifference(from, to, metres, standardUncertainty, text);
    }
  }

  /**
   * One place to stand.
   *
   * @param at the top node at which the ladder stands; empty on the ground
   * @param readings what is read from there, one or more
   */
  public record Stand(Optional<Node> at, List<Wanted> readings) {

    public Stand {
      readings = Args.notEmpty("readings of a stand", readings);
    }
  }

  public TapingRound {
    stands = Args.notEmpty("stands", stands);
  }

  /**
   * Plans the round.
   *
   * @param shape the frame, with its ideal measures
   * @return the round
   * @throws IllegalArgumentException if the shape does not state its ideal measures
   */
  public static TapingRound of(SurveyShape shape) {
    Args.agree(
        shape.ideal().isPresent(), "frame: states no measures", "state what was meant to be built");
    return new Plan(shape).round();
  }

  /** Gathers the readings of one frame. */
  private static final class Plan {

    private final SurveyShape shape;
    private final StartFrame ideal;
    private final int sides;

    Plan(SurveyShape shape) {
      this.shape = shape;
      this.ideal = StartFrame.of(shape, List.of());
      this.sides = shape.sides();
    }

    TapingRound round() {
      List<Stand> stands = new ArrayList<>();
      stands.add(new Stand(Optional.empty(), ground()));
      if (shape.truncated()) {
        int first = 1;
        while (first <= sides) {
          int last = first;
          while (last < sides && apart(first, last + 1) <= 2 * LADDER_REACH) {
            last++;
          }
          stands.add(ladder(first, last));
          first = last + 1;
        }
      } else {
        List<Wanted> top = new ArrayList<>();
        for (int i = 1; i <= sides; i++) {
          top.add(distance(Node.base(i), Node.APEX));
        }
        top.add(rise(Node.base(1), Node.APEX));
        top.add(rise(Node.base(1 + sides / 2), Node.APEX));
        stands.add(new Stand(Optional.of(Node.APEX), top));
      }
      return new TapingRound(stands);
    }

    private List<Wanted> ground() {
      List<Wanted> readings = new ArrayList<>();
      corners().forEach(i -> readings.add(distance(Node.base(i), Node.base(after(i, 1)))));
      across().forEach(pair -> readings.add(distance(Node.base(pair[0]), Node.base(pair[1]))));
      if (sides == 3) {
        // Nothing lies across a triangle: only the same sides again, from the other end, check
        // them.
        corners().forEach(i -> readings.add(distance(Node.base(after(i, 1)), Node.base(i))));
      }
      if (sides > 5) {
        corners().forEach(i -> readings.add(distance(Node.base(i), Node.base(after(i, 2)))));
      }
      IntStream.rangeClosed(2, sides).forEach(i -> readings.add(rise(Node.base(1), Node.base(i))));
      return readings;
    }

    /** Everything that is read at the top corners within reach of one stand. */
    private Stand ladder(int first, int last) {
      List<Wanted> readings = new ArrayList<>();
      for (int i = first; i <= last; i++) {
        Node top = Node.opening(i);
        readings.add(distance(Node.base(i), top));
        readings.add(distance(Node.base(after(i, sides - 1)), top));
        readings.add(distance(Node.base(after(i, 1)), top));
        readings.add(distance(top, Node.opening(after(i, 1))));
        for (int[] pair : across().toList()) {
          if (pair[0] == i) {
            readings.add(distance(top, Node.opening(pair[1])));
          }
        }
        if ((i - 1) % Math.max(1, sides / 3) == 0) {
          // Three levels hold the opening's plane; the tape's distances place the rest.
          readings.add(rise(Node.base(1), top));
        }
      }
      return new Stand(Optional.of(Node.opening(first)), readings);
    }

    private Stream<Integer> corners() {
      return IntStream.rangeClosed(1, sides).boxed();
    }

    /** Each corner with the one opposite, each pair once; none in a triangle. */
    private Stream<int[]> across() {
      int half = sides / 2;
      if (sides == 3) {
        return Stream.empty();
      }
      int pairs = sides % 2 == 0 ? half : sides;
      return IntStream.rangeClosed(1, pairs).mapToObj(i -> new int[] {i, after(i, half)});
    }

    private int after(int corner, int steps) {
      return (corner - 1 + steps) % sides + 1;
    }

    private double apart(int first, int second) {
      return length(Node.opening(first), Node.opening(second));
    }

    private Wanted distance(Node from, Node to) {
      return new Wanted(Quantity.DISTANCE, from, to, length(from, to));
    }

    private Wanted rise(Node from, Node to) {
      return new Wanted(Quantity.RISE, from, to, ideal.place(to)[2] - ideal.place(from)[2]);
    }

    private double length(Node from, Node to) {
      double[] a = ideal.place(from);
      double[] b = ideal.place(to);
      return StrictMath.hypot(StrictMath.hypot(b[0] - a[0], b[1] - a[1]), b[2] - a[2]);
    }
  }
}
