package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/**
 * One row of congruent panels along a straight line, bases parallel to it, each second panel head
 * to tail (turned by half a turn) so that legs lie against legs.
 */
final class PanelRow {

  private static final Source PLANE = Source.derived("plane geometry of a row head to tail");

  private PanelRow() {}

  /**
   * Length of a row of n panels.
   *
   * <p>Two neighbours share a parallelogram of side {@code b + t}, so n panels need {@code
   * floor(n/2) (b + t)} and, for an odd n, one more panel; the slanted end adds what the row sticks
   * out beyond that. With spacing s each leg met adds {@code s leg / h}.
   *
   * @param p the panel
   * @param n panels, 1 or more
   * @param spacing between neighbours, in metres
   * @param headToTail false if all must stand the same way up
   * @param steps takes the worked steps
   * @return the length, in metres
   */
  @Calculation("geometry.layout.rowlength")
  static double length(PanelShape p, int n, double spacing, boolean headToTail, Steps steps) {
    double gapRight = p.legGap(true, spacing);
    double gapLeft = p.legGap(false, spacing);
    double b = p.b();
    double t = p.t();
    double l = p.l();
    if (!headToTail) {
      double gap = p.baseGap(spacing);
      double pitch =
          steps
              .step("p", "pitch of panels that stand the same way up")
              .formula("b + g")
              .with("b", b, "m")
              .with("g", gap, "m")
              .from(PLANE)
              .note("g: the spacing, measured along the base where a leg leans out")
              .gives(b + gap, "m");
      double reach =
          steps
              .step("w", "width of one panel")
              .formula("max(b, l + t) - min(0, l)")
              .with("b", b, "m")
              .with("t", t, "m")
              .with("l", l, "m")
              .from(PLANE)
              .gives(Math.max(b, l + t) - Math.min(0, l), "m");
      return steps
          .step("L", "length of the row")
          .formula("(n - 1) * p + w")
          .with("n", n, "")
          .with("p", pitch, "m")
          .with("w", reach, "m")
          .from(PLANE)
          .gives((n - 1) * pitch + reach, "m");
    }
    double pair =
        steps
            .step("P", "pitch of a pair head to tail")
            .formula("b + t + gR + gL")
            .with("b", b, "m")
            .with("t", t, "m")
            .with("gR", gapRight, "m")
            .with("gL", gapLeft, "m")
            .from(PLANE)
            .note("gR, gL: the spacing measured along the base across the right and the left leg")
            .gives(b + t + gapRight + gapLeft, "m");
    if (n % 2 == 0) {
      return steps
          .step("L", "length of the row")
          .formula("n / 2 * P - gL + abs(l)")
          .with("n", n, "")
          .with("P", pair, "m")
          .with("gL", gapLeft, "m")
          .with("l", l, "m")
          .from(PLANE)
          .note("an even row is a parallelogram; its slant adds |l|")
          .gives(n / 2.0 * pair - gapLeft + Math.abs(l), "m");
    }
    return steps
        .step("L", "length of the row")
        .formula("(n - 1) / 2 * P + max(b, l + t) - min(0, l)")
        .with("n", n, "")
        .with("P", pair, "m")
        .with("b", b, "m")
        .with("t", t, "m")
        .with("l", l, "m")
        .from(PLANE)
        .note("an odd row is a trapezoid: pairs and one panel more")
        .gives((n - 1) / 2.0 * pair + Math.max(b, l + t) - Math.min(0, l), "m");
  }

  static double length(PanelShape p, int n, double spacing, boolean headToTail) {
    return length(p, n, spacing, headToTail, Steps.none());
  }

  /** The most panels whose row is at most {@code room} long; 0 if not even one is. */
  static int most(PanelShape p, double room, double spacing, boolean headToTail) {
    double tolerance = 1e-12 * (room + p.b());
    if (length(p, 1, spacing, headToTail) > room + tolerance) {
      return 0;
    }
    double pitch = headToTail ? (p.b() + p.t()) / 2 : p.b();
    int low = 1;
    int high = (int) Math.min(1_000_000, room / pitch + 3);
    while (low < high) {
      int mid = (low + high + 1) >>> 1;
      if (length(p, mid, spacing, headToTail) <= room + tolerance) {
        low = mid;
      } else {
        high = mid - 1;
      }
    }
    return low;
  }

  /**
   * Where panel number {@code i} (from 0) of a row begins: the x of its base's left corner if it
   * stands, of its top's left end if it is turned; the row's leftmost point is at 0.
   */
  static double start(PanelShape p, int i, double spacing, boolean headToTail) {
    double from = -Math.min(0, p.l());
    if (!headToTail) {
      return from + i * (p.b() + p.baseGap(spacing));
    }
    double pair = p.b() + p.t() + p.legGap(true, spacing) + p.legGap(false, spacing);
    int pairs = i / 2;
    return from + pairs * pair + (i % 2 == 0 ? 0 : p.b() + p.legGap(true, spacing));
  }
}
