package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.check.Args;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How far the seams of a cover are made: each is made or left, none is both.
 *
 * @param made the seams that are made, in the order of the work
 * @param left the seams that are left to make, in the order of the work
 */
public record SeamsLeft(List<SeamRun> made, List<SeamRun> left) {

  public SeamsLeft {
    made = List.copyOf(made);
    left = List.copyOf(left);
  }

  /**
   * Takes what is made off all seams. Time grows with all seams times those that are made.
   *
   * @param all every seam of the cover
   * @param made the seams that are made, each one of {@code all} with its name, length and count;
   *     may be empty
   * @return both parts, each in the order of {@code all}
   * @throws IllegalArgumentException if a seam is made that the cover does not have
   */
  public static SeamsLeft of(SeamBill all, List<SeamRun> made) {
    List<SeamRun> open = new ArrayList<>(made);
    List<SeamRun> done = new ArrayList<>();
    List<SeamRun> left = new ArrayList<>();
    for (SeamRun run : all.runs()) {
      (open.remove(run) ? done : left).add(run);
    }
    Args.require(
        open.isEmpty(),
        "seams that are made",
        open.stream().map(SeamRun::name).toList().toString(),
        "must be seams of the cover");
    return new SeamsLeft(done, left);
  }

  /**
   * Computes the length of what is made.
   *
   * @return in metres, 0 if nothing is
   */
  public double madeLength() {
    return metres(made);
  }

  /**
   * Computes the length of what is left.
   *
   * @return in metres, 0 if nothing is
   */
  public double leftLength() {
    return metres(left);
  }

  private static double metres(List<SeamRun> runs) {
    return runs.stream().mapToDouble(SeamRun::wholeLength).sum();
  }

  /**
   * Lists the length of every single seam that is left.
   *
   * @return in metres, in the order of the work; may be empty
   */
  public List<Double> leftLengths() {
    List<Double> all = new ArrayList<>();
    left.forEach(run -> all.addAll(Collections.nCopies(run.count(), run.length())));
    return List.copyOf(all);
  }

  /**
   * Counts the fixings in what is made.
   *
   * @param pattern how fixings stand in a seam
   * @return 0 or more, without spare
   * @throws IllegalArgumentException if a row has over ten million
   */
  public int madeFixings(FixingPattern pattern) {
    return fixings(made, pattern);
  }

  /**
   * Counts the fixings that what is left takes.
   *
   * @param pattern how fixings stand in a seam
   * @return 0 or more, without spare
   * @throws IllegalArgumentException if a row has over ten million
   */
  public int leftFixings(FixingPattern pattern) {
    return fixings(left, pattern);
  }

  private static int fixings(List<SeamRun> runs, FixingPattern pattern) {
    return runs.stream().mapToInt(run -> run.count() * (int) pattern.count(run.length())).sum();
  }
}
