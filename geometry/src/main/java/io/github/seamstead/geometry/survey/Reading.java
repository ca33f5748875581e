package io.github.seamstead.geometry.survey;

import io.github.seamstead.geometry.tape.TapeClass;
import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * One reading between nodes. Repeated readings of the same distance are simply given again. Every
 * reading carries the standard uncertainty of that single reading and, if known, the words that
 * stand in the field book, from which slips of the pen are traced.
 */
public sealed interface Reading {

  /**
   * Gives what was read.
   *
   * @return in metres
   */
  double value();

  /**
   * Gives the standard uncertainty of the reading.
   *
   * @return in metres, greater than 0
   */
  double standardUncertainty();

  /**
   * Gives the words of the field book.
   *
   * @return such as {@code 5.38 m} or {@code 17 ft 3 in}; empty if unknown
   */
  String asWritten();

  /**
   * Lists the nodes that take part.
   *
   * @return two or three different nodes
   */
  List<Node> nodes();

  /**
   * Writes what was measured.
   *
   * @return such as {@code B1-B2}
   */
  String name();

  /**
   * The same reading, believed less or more.
   *
   * @param u its standard uncertainty, in metres, 1e-6 to 10
   * @return the new reading
   * @throws IllegalArgumentException if the uncertainty is out of range
   */
  default Reading withUncertainty(double u) {
    if (this instanceof Distance d) {
      return new Distance(d.from(), d.to(), d.value(), u, d.asWritten());
    }
    if (this instanceof LevelDistance d) {
      return new LevelDistance(d.from(), d.to(), d.value(), u, d.asWritten());
    }
    if (this instanceof HeightDifference h) {
      return new HeightDifference(h.from(), h.to(), h.value(), u, h.asWritten());
    }
    PlumbOffset p = (PlumbOffset) this;
    return new PlumbOffset(p.hung(), p.mark(), p.towards(), p.value(), u, p.asWritten());
  }

  /**
   * The same quantity with another value, and no words of the field book.
   *
   * @param value in metres
   * @return the new reading
   * @throws IllegalArgumentException if the value is out of range
   */
  default Reading withValue(double value) {
    if (this instanceof Distance d) {
      return new Distance(d.from(), d.to(), value, d.standardUncertainty(), "");
    }
    if (this instanceof LevelDistance d) {
      return new LevelDistance(d.from(), d.to(), value, d.standardUncertainty(), "");
    }
    if (this instanceof HeightDifference h) {
      return new HeightDifference(h.from(), h.to(), value, h.standardUncertainty(), "");
    }
    PlumbOffset p = (PlumbOffset) this;
    return new PlumbOffset(p.hung(), p.mark(), p.towards(), value, p.standardUncertainty(), "");
  }

  /**
   * Makes a taped distance.
   *
   * @param from one end
   * @param to the other end
   * @param value the distance, corrected for the tape if need be, in metres, greater than 0
   * @param standardUncertainty in metres, 1e-6 to 10
   * @return the reading
   * @throws IllegalArgumentException if a value is out of range or the ends are the same node
   */
  static Distance distance(Node from, Node to, double value, double standardUncertainty) {
    return new Distance(from, to, value, standardUncertainty, "");
  }

  /**
   * Makes a taped distance whose uncertainty comes from the tape's accuracy class and the hand that
   * holds it.
   *
   * @param from one end
   * @param to the other end
   * @param value the distance, in metres, greater than 0
   * @param tape the tape's accuracy class
   * @return the reading with the uncertainty of {@link TapeClass#readingUncertainty}
   * @throws IllegalArgumentException if a value is out of range or the ends are the same node
   */
  static Distance distance(Node from, Node to, double value, TapeClass tape) {
    Args.positive("distance " + from + "-" + to, value, "m");
    return distance(from, to, value, tape.readingUncertainty(value));
  }

  /**
   * The slope distance straight from one node to another.
   *
   * @param from one end
   * @param to the other end
   * @param value in metres, greater than 0
   * @param standardUncertainty in metres, 1e-6 to 10
   * @param asWritten the words of the field book; may be empty
   */
  record Distance(Node from, Node to, double value, double standardUncertainty, String asWritten)
      implements Reading {

    public Distance {
      ReadingChecks.twoNodes("distance", from, to);
      ReadingChecks.length("distance " + from + "-" + to, value);
      ReadingChecks.uncertainty(from + "-" + to, standardUncertainty);
    }

    @Override
    public List<Node> nodes() {
      return List.of(from, to);
    }

    @Override
    public String name() {
      return from + "-" + to;
    }
  }

  /**
   * The distance measured level between the plumb lines of two nodes.
   *
   * @param from one end
   * @param to the other end
   * @param value in metres, greater than 0
   * @param standardUncertainty in metres, 1e-6 to 10
   * @param asWritten the words of the field book; may be empty
   */
  record LevelDistance(
      Node from, Node to, double value, double standardUncertainty, String asWritten)
      implements Reading {

    public LevelDistance {
      ReadingChecks.twoNodes("level distance", from, to);
      ReadingChecks.length("level distance " + from + "-" + to, value);
      ReadingChecks.uncertainty(from + "-" + to, standardUncertainty);
    }

    @Override
    public List<Node> nodes() {
      return List.of(from, to);
    }

    @Override
    public String name() {
      return from + "-" + to + " (level distance)";
    }
  }

  /**
   * A difference of heights, {@code z(to) - z(from)}, by level, water tube or laser.
   *
   * @param from the node from which the height counts
   * @param to the node whose height is given
   * @param value in metres, greater than 0 where {@code to} is the higher
   * @param standardUncertainty in metres, 1e-6 to 10
   * @param asWritten the words of the field book; may be empty
   */
  record HeightDifference(
      Node from, Node to, double value, double standardUncertainty, String asWritten)
      implements Reading {

    public HeightDifference {
      ReadingChecks.twoNodes("height difference", from, to);
      ReadingChecks.offset("height difference " + from + "-" + to, value);
      ReadingChecks.uncertainty(from + "-" + to, standardUncertainty);
    }

    @Override
    public List<Node> nodes() {
      return List.of(from, to);
    }

    @Override
    public String name() {
      return from + "-" + to + " (height)";
    }
  }

  /**
   * A plumb offset: a plumb bob hangs from {@code hung}; how far its mark lies from {@code mark},
   * measured level along the line from {@code mark} towards {@code towards} (negative: away from
   * it). Two offsets towards different corners fix the mark.
   *
   * @param hung the node from which the bob hangs
   * @param mark the node from which the offset counts
   * @param towards the node that gives the direction
   * @param value in metres, negative on the far side
   * @param standardUncertainty in metres, 1e-6 to 10
   * @param asWritten the words of the field book; may be empty
   */
  record PlumbOffset(
      Node hung,
      Node mark,
      Node towards,
      double value,
      double standardUncertainty,
      String asWritten)
      implements Reading {

    public PlumbOffset {
      ReadingChecks.twoNodes("plumb offset", hung, mark);
      ReadingChecks.twoNodes("plumb offset", hung, towards);
      ReadingChecks.twoNodes("plumb offset", mark, towards);
      ReadingChecks.offset("plumb offset of " + hung, value);
      ReadingChecks.uncertainty("plumb offset of " + hung, standardUncertainty);
    }

    @Override
    public List<Node> nodes() {
      return List.of(hung, mark, towards);
    }

    @Override
    public String name() {
      return hung + " plumbed at " + mark + " towards " + towards;
    }
  }
}
