package io.github.seamstead.geometry.layout;

import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;

/**
 * One row of congruent panels, bases parallel to it: head to tail (each second panel turned by half
 * a turn) so that legs lie against legs, or all the same way up.
 */
final class PanelRow {

  private static final Source PLANE = Source.derived("plane geometry of panels leg against leg");

  private final RowContacts contacts;
  private final boolean firstTurned;
  private final double[] heights;

  /**
   * A row of as many panels as there are heights.
   *
   * @param firstTurned true if the row begins with a turned panel
   * @param heights how far each panel is moved up across the row, in metres; at least one
   */
  PanelRow(RowContacts contacts, boolean firstTurned, double[] heights) {
    this.contacts = contacts;
    this.firstTurned = firstTurned;
    this.heights = heights.clone();
  }

  double height(int i) {
    return heights[i];
  }

  boolean turned(int i) {
    return contacts.headToTail() && firstTurned == (i % 2 == 0);
  }

  /**
   * Where each panel's corner lies along the row: a standing panel's left base corner, a turned
   * one's left top corner. The row's leftmost point is at 0.
   */
  double[] corners() {
    double[] x = new double[heights.length];
    double from = contacts.leftReach(turned(0));
    for (int i = 1; i < x.length; i++) {
      x[i] = x[i - 1] + contacts.pitch(turned(i - 1), heights[i - 1], heights[i]);
      from = Math.min(from, x[i] + contacts.leftReach(turned(i)));
    }
    for (int i = 0; i < x.length; i++) {
      x[i] -= from;
    }
    return x;
  }

  double length() {
    return length(Steps.none());
  }

  /**
   * Length of the row.
   *
   * <p>Head to tail, {@code nR} contacts are along right legs of standing panels and {@code nL}
   * along left legs; each is {@code b + gR - cR (d - u)} or {@code t + gL - cL (d - u)} from corner
   * to corner, where the turned panel is at height d and the standing one at u, and gR and gL are
   * the spacing measured along the base. HR and HL are the sums of {@code d - u}. Standing the same
   * way up, n0 contacts are level and {@code b + g} long, and those up and down are {@code b + gR -
   * cR x} and {@code b + gL - cL x} for a difference x. w is what the end panels reach out.
   *
   * @param steps takes the worked steps
   * @return the length, in metres; O(n) for n panels
   */
  @Calculation("geometry.layout.rowlength")
  double length(Steps steps) {
    double[] x = corners();
    int last = x.length - 1;
    int rightLegs = 0;
    int leftLegs = 0;
    double rightRise = 0;
    double leftRise = 0;
    double reach = 0;
    for (int i = 0; i <= last; i++) {
      reach = Math.max(reach, x[i] + contacts.rightReach(turned(i)));
      double rise = i == 0 ? 0 : heights[i] - heights[i - 1];
      if (i > 0 && (contacts.headToTail() ? !turned(i - 1) : rise > 0)) {
        rightLegs++;
        rightRise += rise;
      } else if (i > 0 && (contacts.headToTail() || rise < 0)) {
        leftLegs++;
        leftRise -= rise;
      }
    }
    int level = last - rightLegs - leftLegs;
    double ends = x[0] + reach - x[last];
    PanelShape p = contacts.shape();
    double right = run(steps, true, p);
    double left = run(steps, false, p);
    double rightPitch = pitch(steps, "pR", p.b(), contacts.gap(true));
    double leftPitch =
        pitch(steps, "pL", contacts.headToTail() ? p.t() : p.b(), contacts.gap(false));
    double levelPitch = pitch(steps, "p0", p.b(), contacts.gapLevel());
    return steps
        .step("L", "length of the row")
        .formula("nR * pR + nL * pL + n0 * p0 - cR * HR - cL * HL + w")
        .with("nR", rightLegs, "")
        .with("pR", rightPitch, "m")
        .with("nL", leftLegs, "")
        .with("pL", leftPitch, "m")
        .with("n0", level, "")
        .with("p0", levelPitch, "m")
        .with("cR", right, "")
        .with("HR", rightRise, "m")
        .with("cL", left, "")
        .with("HL", leftRise, "m")
        .with("w", ends, "m")
        .from(PLANE)
        .note("HR, HL: heights gained over the contacts; w: what the end panels reach out")
        .gives(
            rightLegs * rightPitch
                + leftLegs * leftPitch
                + level * levelPitch
                - right * rightRise
                - left * leftRise
                + ends,
            "m");
  }

  private static double run(Steps steps, boolean right, PanelShape p) {
    double run = right ? p.b() - p.l() - p.t() : p.l();
    return steps
        .step(right ? "cR" : "cL", right ? "lean of the right leg" : "lean of the left leg")
        .formula("r / h")
        .with("r", run, "m")
        .with("h", p.h(), "m")
        .from(PLANE)
        .note("r: how far the leg leans in over its height")
        .gives(run / p.h(), "");
  }

  private static double pitch(Steps steps, String symbol, double edge, double gap) {
    return steps
        .step(symbol, "pitch of two level neighbours")
        .formula("e + g")
        .with("e", edge, "m")
        .with("g", gap, "m")
        .from(PLANE)
        .note("e: base or top that the contact follows; g: the spacing measured along it")
        .gives(edge + gap, "m");
  }
}
