package io.github.seamstead.api.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** The marked rows are those that a search over all pairs and objectives finds. */
class ParetoFrontTest {

  private static final List<Measure> OBJECTIVES =
      List.of(Measure.MONEY, Measure.WEEKS, Measure.FLOOR_AREA);

  private static VariantRow row(int number, boolean feasible, Integer... values) {
    Map<Measure, Double> measures = new EnumMap<>(Measure.class);
    for (int i = 0; i < values.length; i++) {
      if (values[i] >= 0) {
        measures.put(OBJECTIVES.get(i), (double) values[i]);
      }
    }
    return new VariantRow(
        number,
        "row " + number,
        feasible ? List.of() : List.of("no"),
        measures,
        Optional.empty(),
        false,
        List.of(),
        Optional.empty());
  }

  /** By the words of the definition, one pair and one objective at a time. */
  private static Set<Integer> bruteForce(List<VariantRow> rows) {
    Set<Integer> best = new TreeSet<>();
    for (VariantRow mine : rows) {
      boolean beaten = !mine.isFeasible() || mine.values().size() < OBJECTIVES.size();
      for (VariantRow other : rows) {
        if (!other.isFeasible() || other.values().size() < OBJECTIVES.size() || beaten) {
          continue;
        }
        int worse = 0;
        int better = 0;
        for (Measure m : OBJECTIVES) {
          double gain = mine.value(m).orElseThrow() - other.value(m).orElseThrow();
          double signed = m == Measure.FLOOR_AREA ? -gain : gain;
          better += signed > 0 ? 1 : 0;
          worse += signed < 0 ? 1 : 0;
        }
        beaten = worse == 0 && better > 0;
      }
      if (!beaten) {
        best.add(mine.number());
      }
    }
    return best;
  }

  @Property(seed = "20260101", tries = 300)
  void theFrontIsThatOfTheDefinition(
      @ForAll @Size(min = 1, max = 30)
          List<@Size(value = 4) List<@IntRange(min = -1, max = 5) Integer>> numbers) {
    List<VariantRow> rows = new ArrayList<>();
    rows.add(row(0, true, 3, 3, 3));
    for (List<Integer> n : numbers) {
      rows.add(row(rows.size(), n.get(3) > 0, n.get(0), n.get(1), n.get(2)));
    }
    ParetoFront front = ParetoFront.of(rows, OBJECTIVES);
    assertThat(front.objectives()).isEqualTo(OBJECTIVES);
    assertThat(front.numbers()).isEqualTo(bruteForce(rows));
  }

  @Test
  void anObjectiveThatNoRowHasIsLeftOut() {
    List<VariantRow> rows = List.of(row(0, true, 1, 2), row(1, true, 2, 1), row(2, true, 2, 2));
    ParetoFront front = ParetoFront.of(rows, List.of(Measure.MONEY, Measure.WEEKS, Measure.CLAY));
    assertThat(front.objectives()).containsExactly(Measure.MONEY, Measure.WEEKS);
    assertThat(front.numbers()).containsExactly(0, 1);
    assertThat(front.text()).isEqualTo("less money (priced part), less weeks (likely)");
  }

  @Test
  void equalRowsDoNotBeatEachOther() {
    List<VariantRow> rows = List.of(row(0, true, 1, 1, 1), row(1, true, 1, 1, 1));
    assertThat(ParetoFront.of(rows, OBJECTIVES).numbers()).containsExactly(0, 1);
  }
}
