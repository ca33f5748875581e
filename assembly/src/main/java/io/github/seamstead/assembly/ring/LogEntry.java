package io.github.seamstead.assembly.ring;

import io.github.seamstead.shared.check.Args;
import java.util.Optional;

/**
 * One line of the join log, as the crew typed it.
 *
 * @param action joined or undone
 * @param firstEdge what is written on one edge, such as {@code 3R}; not blank
 * @param secondEdge what is written on the other, such as {@code 4L}; not blank
 * @param facing which sides lay together
 * @param firstMark the joint mark read on the first edge, if it was typed
 * @param secondMark the joint mark read on the second edge, if it was typed
 */
public record LogEntry(
    Action action,
    String firstEdge,
    String secondEdge,
    Facing facing,
    Optional<String> firstMark,
    Optional<String> secondMark) {

  /** What was done. */
  public enum Action {
    /** A seam was made. */
    JOINED,
    /** A seam was opened again. */
    UNDONE
  }

  public LogEntry {
    Args.notBlank("first edge", firstEdge);
    Args.notBlank("second edge", secondEdge);
  }

  /**
   * A seam made with good sides together.
   *
   * @param firstEdge one edge
   * @param secondEdge the other
   * @return the entry
   */
  public static LogEntry joined(String firstEdge, String secondEdge) {
    return joined(firstEdge, secondEdge, Facing.GOOD_TOGETHER);
  }

  /**
   * A seam made.
   *
   * @param firstEdge one edge
   * @param secondEdge the other
   * @param facing which sides lay together
   * @return the entry
   */
  public static LogEntry joined(String firstEdge, String secondEdge, Facing facing) {
    return new LogEntry(
        Action.JOINED, firstEdge, secondEdge, facing, Optional.empty(), Optional.empty());
  }

  /**
   * A seam opened again.
   *
   * @param firstEdge one edge
   * @param secondEdge the other
   * @return the entry
   */
  public static LogEntry undone(String firstEdge, String secondEdge) {
    return new LogEntry(
        Action.UNDONE,
        firstEdge,
        secondEdge,
        Facing.GOOD_TOGETHER,
        Optional.empty(),
        Optional.empty());
  }

  /**
   * The same entry with the joint marks that were read on the two edges.
   *
   * @param first mark on the first edge
   * @param second mark on the second edge
   * @return the new entry
   */
  public LogEntry marked(String first, String second) {
    return new LogEntry(
        action, firstEdge, secondEdge, facing, Optional.of(first), Optional.of(second));
  }
}
