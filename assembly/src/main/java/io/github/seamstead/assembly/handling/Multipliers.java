package io.github.seamstead.assembly.handling;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * The multipliers of the revised lifting equation at one end of a lift.
 *
 * @param reach horizontal multiplier HM
 * @param height vertical multiplier VM
 * @param travel distance multiplier DM
 * @param twist asymmetry multiplier AM
 * @param frequency frequency multiplier FM
 * @param coupling coupling multiplier CM
 * @param mass recommended limit at this end, in kilograms
 * @param outside why a multiplier is 0, in words; empty if none is
 */
public record Multipliers(
    double reach,
    double height,
    double travel,
    double twist,
    double frequency,
    double coupling,
    double mass,
    List<String> outside) {

  private static final double GREATEST_TWIST = 135;
  private static final double TWIST_SLOPE = 0.0032;
  private static final double HAIR = 1e-9;

  public Multipliers {
    outside = List.copyOf(outside);
  }

  static Multipliers at(
      LiftPoint point, LiftPoint start, LiftTask task, LiftForm form, String end, Steps steps) {
    steps.section("At the " + end + ", " + form.label() + " form");
    List<String> outside = new ArrayList<>();
    // A length given in the form's own unit must not fall off a limit by the rounding of metres.
    double h = snap(point.reach() / form.unitLength);
    double v = snap(point.height() / form.unitLength);
    double d = snap(Math.abs(task.to().height() - task.from().height()) / form.unitLength);
    double a = snap(Math.toDegrees(point.twist()));
    boolean high = v >= form.bestHeight;
    // The lower of start and end decides, which is never on the high side.
    boolean bothHigh = high && snap(start.height() / form.unitLength) >= form.bestHeight;
    String unit = form.lengthUnit;

    double hm = form.leastReach / Math.max(h, form.leastReach);
    hm =
        h > form.greatestReach
            ? none(steps, "HM", "reach", h, form.greatestReach, unit, outside)
            : steps
                .step("HM", "horizontal multiplier")
                .formula("H_0 / max(H, H_0)")
                .with("H_0", form.leastReach, unit)
                .with("H", h, unit)
                .from(LiftLimit.MANUAL)
                .gives(hm, "");
    double vm = 1 - form.heightSlope * Math.abs(v - form.bestHeight);
    vm =
        v > form.greatestHeight
            ? none(steps, "VM", "height of the hands", v, form.greatestHeight, unit, outside)
            : steps
                .step("VM", "vertical multiplier")
                .formula("1 - k_V * abs(V - V_0)")
                .with("k_V", form.heightSlope, "1/" + unit)
                .with("V", v, unit)
                .with("V_0", form.bestHeight, unit)
                .from(LiftLimit.MANUAL)
                .gives(vm, "");
    double dm = 0.82 + form.travelSlope / Math.max(d, form.leastTravel);
    dm =
        d > form.greatestHeight
            ? none(steps, "DM", "travel", d, form.greatestHeight, unit, outside)
            : steps
                .step("DM", "distance multiplier")
                .formula("0.82 + k_D / max(D, D_0)")
                .with("k_D", form.travelSlope, unit)
                .with("D", d, unit)
                .with("D_0", form.leastTravel, unit)
                .from(LiftLimit.MANUAL)
                .gives(dm, "");
    double am = 1 - TWIST_SLOPE * a;
    am =
        a > GREATEST_TWIST
            ? none(steps, "AM", "twist", a, GREATEST_TWIST, "deg", outside)
            : steps
                .step("AM", "asymmetry multiplier")
                .formula("1 - k_A * A")
                .with("k_A", TWIST_SLOPE, "1/deg")
                .with("A", a, "deg")
                .from(LiftLimit.MANUAL)
                .gives(am, "");
    double fm = task.duration().multiplier(task.liftsPerMinute(), bothHigh);
    if (fm == 0) {
      outside.add("too many lifts a minute for " + task.duration().label());
    }
    steps
        .step("FM", "frequency multiplier")
        .from(LiftLimit.MANUAL.at("table 5"))
        .note(Numbers.plain(task.liftsPerMinute()) + " lifts a minute, " + task.duration().label())
        .gives(fm, "");
    double cm = task.coupling().multiplier(high);
    steps
        .step("CM", "coupling multiplier")
        .from(LiftLimit.MANUAL.at("table 7"))
        .note(task.coupling().label() + " coupling")
        .gives(cm, "");
    double limit = form.loadConstant * hm * vm * dm * am * fm * cm * form.unitMass;
    steps
        .step("m_" + end, "recommended limit at the " + end)
        .formula("LC * HM * VM * DM * AM * FM * CM * u")
        .with("LC", form.loadConstant, form.massUnit)
        .with("HM", hm, "")
        .with("VM", vm, "")
        .with("DM", dm, "")
        .with("AM", am, "")
        .with("FM", fm, "")
        .with("CM", cm, "")
        .with("u", form.unitMass, "kg/" + form.massUnit)
        .from(LiftLimit.MANUAL)
        .gives(limit, "kg");
    return new Multipliers(hm, vm, dm, am, fm, cm, limit, outside);
  }

  private static double none(
      Steps steps,
      String symbol,
      String what,
      double given,
      double most,
      String unit,
      List<String> outside) {
    String reason = what + " over " + Math.round(most) + " " + unit;
    outside.add(reason);
    return steps
        .step(symbol, "multiplier of the " + what)
        .from(LiftLimit.MANUAL)
        .note("0, as " + reason + " lies outside the method: " + Numbers.plain(given) + " " + unit)
        .gives(0, "");
  }

  private static double snap(double value) {
    double near = Math.rint(value * 1000) / 1000;
    return Math.abs(value - near) < HAIR * Math.max(1, Math.abs(value)) ? near : value;
  }
}
