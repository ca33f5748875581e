package io.github.seamstead.geometry.survey;

import static io.github.seamstead.shared.quantity.PhysicalConstants.INCH;

import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Tries the slips that people make with a tape and a field book, and keeps those that fit. */
final class BlunderHints {

  /** A slip fits if it explains the error to within this many standard uncertainties. */
  private static final double FITS = 3;

  private static final int MOST_HINTS = 3;

  /** Among so many pairs of nodes one fits by chance; such a hint comes last. */
  private static final int BY_CHANCE = 3;

  private static final double FOOT = 0.3048;

  private record Hint(String text, double misfit, int rank) {}

  private final Reading reading;
  private final Uncertain predicted;
  private final double uncertainty;
  private final List<Hint> hints = new ArrayList<>();

  private BlunderHints(Reading reading, Uncertain predicted) {
    this.reading = reading;
    this.predicted = predicted;
    this.uncertainty =
        StrictMath.hypot(predicted.standardUncertainty(), reading.standardUncertainty());
  }

  static List<String> of(Reading reading, Uncertain predicted, Adjustment accepted) {
    return search(reading, predicted, accepted).stream()
        .sorted(Comparator.comparingInt(Hint::rank).thenComparingDouble(Hint::misfit))
        .limit(MOST_HINTS)
        .map(Hint::text)
        .toList();
  }

  /** Tells whether a slip of the tape or the pen explains the error to the digit. */
  static boolean explain(Reading reading, Uncertain predicted, Adjustment accepted) {
    return search(reading, predicted, accepted).stream().anyMatch(hint -> hint.rank() < BY_CHANCE);
  }

  private static List<Hint> search(Reading reading, Uncertain predicted, Adjustment accepted) {
    BlunderHints search = new BlunderHints(reading, predicted);
    search.written();
    search.wholeUnits();
    if (!(reading instanceof Reading.HeightDifference)
        && !(reading instanceof Reading.PlumbOffset)) {
      search.wrongUnit();
    }
    search.wrongNode(accepted);
    return search.hints;
  }

  private void offer(double meant, int rank, String text) {
    double misfit = Math.abs(meant - predicted.value()) / uncertainty;
    if (misfit < FITS) {
      hints.add(new Hint(text, misfit, rank));
    }
  }

  private void written() {
    String written = WrittenDigits.textOf(reading);
    meant(written, "digits swapped", WrittenDigits.swaps(written));
    meant(written, "feet and inches exchanged", WrittenDigits.exchanged(written));
    meant(written, "tenths of a foot taken for inches", WrittenDigits.decimalFeet(written));
  }

  private void meant(String written, String slip, List<WrittenDigits.Variant> variants) {
    double correction = WrittenDigits.correction(reading);
    for (WrittenDigits.Variant variant : variants) {
      double meant = variant.value() + correction;
      if (Math.abs(meant - reading.value()) > FITS * reading.standardUncertainty()) {
        offer(meant, 0, slip + ": written " + written + ", probably " + variant.text());
      }
    }
  }

  private void wholeUnits() {
    double error = reading.value() - predicted.value();
    slip(error, 1, 1, "metre", "metres");
    slip(error, 0.1, 5, "decimetre (10 cm)", "decimetres");
    slip(error, FOOT, 3, "foot", "feet");
    slip(error, INCH, 2, "inch", "inches");
    if (reading instanceof Reading.HeightDifference || reading instanceof Reading.PlumbOffset) {
      offer(-reading.value(), 1, "sign turned: probably the other way round");
    }
  }

  private void slip(double error, double unit, int most, String name, String names) {
    long count = Math.round(error / unit);
    // A slip must stand clear of chance: half a unit has to be well above the uncertainty.
    if (count == 0 || Math.abs(count) > most || unit < 4 * uncertainty) {
      return;
    }
    String many = Math.abs(count) == 1 ? "one " + name : Math.abs(count) + " " + names;
    offer(
        reading.value() - count * unit,
        1,
        "read " + many + (count > 0 ? " too long" : " too short"));
  }

  private void wrongUnit() {
    offer(reading.value() * FOOT, 2, "feet booked as metres");
    offer(reading.value() / FOOT, 2, "metres booked as feet");
  }

  private void wrongNode(Adjustment accepted) {
    if (!(reading instanceof Reading.Distance distance)) {
      return;
    }
    for (Node node : accepted.nodeNames()) {
      fitsPair(distance.from(), node, accepted);
      fitsPair(node, distance.to(), accepted);
    }
  }

  private void fitsPair(Node from, Node to, Adjustment accepted) {
    if (from.equals(to) || reading.nodes().containsAll(List.of(from, to))) {
      return;
    }
    Uncertain other = accepted.distance(from, to);
    double misfit =
        Math.abs(other.value() - reading.value())
            / StrictMath.hypot(other.standardUncertainty(), reading.standardUncertainty());
    if (misfit < FITS) {
      hints.add(
          new Hint(
              "wrong node: it fits "
                  + from
                  + "-"
                  + to
                  + " ("
                  + Numbers.fixed(other.value(), 3)
                  + " m)",
              misfit,
              BY_CHANCE));
    }
  }
}
