package io.github.seamstead.geometry.layout;

import java.util.Arrays;

/**
 * How near the panels of one row can stand when they may be moved up across it.
 *
 * <p>Legs lean by {@code cR = (b - l - t) / h} and {@code cL = l / h} of run per height. Neighbours
 * touch along whole leg lines, so moving the turned one of a pair up by x brings it nearer by
 * {@code c x}. Panels of one stand with one panel between must not overlap either; of two that
 * stand, at heights u and u', the base of the higher one comes nearest the other's leg, which keeps
 * a turned panel between them at or below {@code max(u, u') + tau}, {@code tau = (t + gR + gL - g)
 * / (cR + cL)}. Here gR and gL are the spacing measured along the base across the legs and g is the
 * gap that the two panels of one stand need: gR or gL where a corner meets a leg, the gap between
 * bases where they stand level. Seen upside down, a standing panel between two turned ones is at or
 * above their lesser height less tau.
 *
 * <p>These two rules are enough: with heights that differ by no more than h, panels further apart
 * have at every height at which neither of those between is present more than a base's run, less
 * {@code (cR + cL) h = b - t}, for each panel between, and so do not meet.
 */
final class RowContacts {

  private final PanelShape shape;
  private final boolean headToTail;
  private final double right;
  private final double left;
  private final double gapRight;
  private final double gapLeft;
  private final double gapBase;

  RowContacts(PanelShape shape, double spacing, boolean headToTail) {
    this.shape = shape;
    this.headToTail = headToTail;
    right = (shape.b() - shape.l() - shape.t()) / shape.h();
    left = shape.l() / shape.h();
    gapRight = shape.legGap(true, spacing);
    gapLeft = shape.legGap(false, spacing);
    gapBase = shape.baseGap(spacing);
  }

  PanelShape shape() {
    return shape;
  }

  boolean headToTail() {
    return headToTail;
  }

  /** The spacing measured along the base across a right or left leg, in metres. */
  double gap(boolean rightLeg) {
    return rightLeg ? gapRight : gapLeft;
  }

  /** The gap between the bases of level panels that stand the same way up, in metres. */
  double gapLevel() {
    return gapBase;
  }

  /**
   * The most height, up to {@code room}, by which panels may be moved: up to h neighbours still
   * meet along their legs, and up to {@code b / c} no panel comes to begin before the last but one.
   */
  double usable(double room) {
    double steepest = Math.max(right, left);
    double most = Math.min(shape.h(), shape.b() / steepest);
    return Math.max(0, Math.min(room, most));
  }

  /**
   * The most free height that rows one above the other can share, each moved up from the one below
   * by {@code h + s}: 0 head to tail, where the raised bases would meet those of the next row. All
   * one way up, the next row's base corner has to keep clear of a raised panel's legs, {@code cL x
   * <= cR (h + s - x) + gL - gR} and the same with sides changed.
   */
  double sharable(double spacing) {
    double sum = right + left;
    if (headToTail || sum <= 0) {
      return 0;
    }
    double pitch = shape.h() + spacing;
    double byRight = right * pitch + gapLeft - gapRight;
    double byLeft = left * pitch + gapRight - gapLeft;
    return Math.min(byRight, byLeft) / sum;
  }

  /**
   * Heights worth trying, in ascending order: the ends of the free height, the rise at which the
   * second panel of a row begins level with the first, and tau from those.
   */
  double[] levels(boolean turned, double free) {
    if (!headToTail) {
      return free > 0 ? new double[] {0, free} : new double[] {0};
    }
    double sum = right + left;
    double least = shape.t() + gapRight + gapLeft;
    double tau = (least - Math.max(gapRight, gapLeft)) / sum;
    double even = (pitch(false, 0, 0) + leftReach(true) - leftReach(false)) / right;
    double odd = (pitch(true, 0, 0) + leftReach(false) - leftReach(true)) / left;
    double[] rises = {
      0,
      free,
      tau,
      (least - gapBase) / sum,
      (least - Math.min(gapRight, gapLeft)) / sum,
      even,
      odd,
      free - even + tau,
      free - odd + tau
    };
    return Arrays.stream(rises)
        .filter(v -> v >= 0 && v <= free)
        .map(v -> turned ? v : free - v)
        .sorted()
        .distinct()
        .toArray();
  }

  /**
   * Distance along the row between the corners of two neighbours: a standing panel's left base
   * corner, a turned one's left top corner.
   */
  double pitch(boolean fromTurned, double from, double to) {
    if (headToTail) {
      return fromTurned
          ? shape.t() + gapLeft + left * (to - from)
          : shape.b() + gapRight + right * (from - to);
    }
    if (from == to) {
      return shape.b() + gapBase;
    }
    return to > from
        ? shape.b() + gapRight - right * (to - from)
        : shape.b() + gapLeft - left * (from - to);
  }

  /** True if the outer two of three panels in sequence keep clear of one another. */
  boolean clear(boolean middleTurned, double first, double middle, double last) {
    if (!headToTail) {
      return true;
    }
    double rise = middleTurned ? middle - Math.max(first, last) : Math.min(first, last) - middle;
    double gap = first < last ? gapRight : first > last ? gapLeft : gapBase;
    double room = shape.t() + gapRight + gapLeft - gap;
    return (right + left) * rise <= room + 1e-12 * shape.b();
  }

  /** How far a panel reaches to the left of its corner, as a number not greater than 0. */
  double leftReach(boolean turned) {
    return Math.min(0, turned ? shape.l() + shape.t() - shape.b() : shape.l());
  }

  /** How far a panel reaches to the right of its corner. */
  double rightReach(boolean turned) {
    double top = shape.l() + shape.t();
    return turned ? Math.max(shape.t(), top) : Math.max(shape.b(), top);
  }
}
