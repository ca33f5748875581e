package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.derivation.Calculation;
import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * Every seam of a cover, in the order in which they are made: splices and patches on the flat
 * panels, the panels round the ring, hem, skirt, then the cap when the cover has been turned, and
 * the lining by itself.
 *
 * @param runs the seams, in the order of the work
 */
public record SeamBill(List<SeamRun> runs) {

  private static final Source SUM = Source.derived("sum of the lengths of all seams");

  /**
   * Puts the seams in the order of the work; seams of one kind keep their order.
   *
   * @param runs the seams, at least one
   * @throws IllegalArgumentException if there is none
   */
  public SeamBill {
    List<SeamRun> sorted = new ArrayList<>(Args.notEmpty("seams", runs));
    sorted.sort(Comparator.comparing(SeamRun::kind));
    runs = List.copyOf(sorted);
  }

  /**
   * Gives the seams of one kind.
   *
   * @param kind the kind
   * @return may be empty
   */
  public List<SeamRun> of(SeamKind kind) {
    return runs.stream().filter(run -> run.kind() == kind).toList();
  }

  /**
   * Gives the kinds there are.
   *
   * @return each once, in the order of the work
   */
  public List<SeamKind> kinds() {
    return runs.stream().map(SeamRun::kind).distinct().toList();
  }

  /**
   * Computes the length of one kind.
   *
   * @param kind the kind
   * @return in metres, 0 if there is none
   */
  public double length(SeamKind kind) {
    return of(kind).stream().mapToDouble(SeamRun::wholeLength).sum();
  }

  /**
   * Computes the length of all seams.
   *
   * @return in metres
   */
  public double length() {
    return length(Steps.none());
  }

  /**
   * Computes the length of all seams with the steps, one for each kind.
   *
   * @param steps where the steps go
   * @return in metres
   */
  @Calculation("assembly.fixings.seams")
  public double length(Steps steps) {
    double sum = 0;
    for (SeamKind kind : kinds()) {
      double part = length(kind);
      sum =
          steps
              .step("L", "length with " + kind.label())
              .formula("L_before + L_kind")
              .with("L_before", sum, "m")
              .with("L_kind", part, "m")
              .from(SUM)
              .gives(sum + part, "m");
    }
    return sum;
  }

  /**
   * Lists the length of every single seam.
   *
   * @return in metres, in the order of the work
   */
  public List<Double> lengths() {
    List<Double> all = new ArrayList<>();
    runs.forEach(run -> all.addAll(Collections.nCopies(run.count(), run.length())));
    return List.copyOf(all);
  }

  /**
   * Counts the fixings of one kind.
   *
   * @param kind the kind
   * @param pattern how fixings stand in a seam
   * @return 0 or more, without spare
   */
  public int fixings(SeamKind kind, FixingPattern pattern) {
    return of(kind).stream().mapToInt(run -> run.count() * (int) pattern.count(run.length())).sum();
  }

  /**
   * Computes the work of one kind at the pace of the seams that the crew has timed.
   *
   * @param kind the kind
   * @param timePerLength time for a metre of seam, in s/m, greater than 0
   * @return in seconds, of one team
   * @throws IllegalArgumentException if the pace is not positive
   */
  public double workTime(SeamKind kind, double timePerLength) {
    return length(kind) * Args.positive("time for a metre of seam", timePerLength, "s/m");
  }
}
