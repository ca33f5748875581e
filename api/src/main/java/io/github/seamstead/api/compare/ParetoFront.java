package io.github.seamstead.api.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which rows are beaten by none: a row beats another that it is not worse than by any objective and
 * better than by one.
 *
 * @param objectives the measures that count, those that some row has
 * @param numbers the numbers of the rows that none beats
 */
public record ParetoFront(List<Measure> objectives, Set<Integer> numbers) {

  /** The objectives unless others are asked for. */
  public static final List<Measure> USUAL =
      List.of(
          Measure.CLOTH_AREA,
          Measure.MONEY,
          Measure.PERSON_DAYS,
          Measure.WEEKS,
          Measure.HEADROOM,
          Measure.FLOOR_AREA);

  public ParetoFront {
    objectives = List.copyOf(objectives);
    numbers = Collections.unmodifiableSet(new TreeSet<>(numbers));
  }

  /**
   * Finds the rows that none beats. Only rows that can be met and have every objective take part;
   * an objective that no row has, or that is better neither way, is left out. Costs time quadratic
   * in the rows, a few nanoseconds a pair.
   *
   * @param rows the rows
   * @param wanted the objectives
   * @return the rows that none beats
   */
  public static ParetoFront of(List<VariantRow> rows, List<Measure> wanted) {
    List<Measure> objectives =
        wanted.stream()
            .distinct()
            .filter(m -> m.better() != Measure.Better.NEITHER)
            .filter(m -> rows.stream().anyMatch(r -> r.isFeasible() && r.value(m).isPresent()))
            .toList();
    List<VariantRow> whole =
        rows.stream()
            .filter(VariantRow::isFeasible)
            .filter(r -> objectives.stream().allMatch(m -> r.value(m).isPresent()))
            .toList();
    List<double[]> losses = new ArrayList<>();
    whole.forEach(row -> losses.add(losses(row, objectives)));
    Set<Integer> numbers = new TreeSet<>();
    for (int i = 0; i < whole.size() && !objectives.isEmpty(); i++) {
      double[] mine = losses.get(i);
      if (losses.stream().noneMatch(other -> beats(other, mine))) {
        numbers.add(whole.get(i).number());
      }
    }
    return new ParetoFront(objectives, numbers);
  }

  private static double[] losses(VariantRow row, List<Measure> objectives) {
    return objectives.stream()
        .mapToDouble(m -> (m.better() == Measure.Better.MORE ? -1 : 1) * row.value(m).orElseThrow())
        .toArray();
  }

  private static boolean beats(double[] a, double[] b) {
    boolean better = false;
    for (int i = 0; i < a.length; i++) {
      if (a[i] > b[i]) {
        return false;
      }
      better |= a[i] < b[i];
    }
    return better;
  }

  /**
   * Says what counts, for people.
   *
   * @return for example {@code less cloth, less money, more floor}
   */
  public String text() {
    return String.join(
        ", ",
        objectives.stream()
            .map(m -> (m.better() == Measure.Better.MORE ? "more " : "less ") + m.label())
            .toList());
  }
}
