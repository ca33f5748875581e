package io.github.seamstead.api.chapter.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.job.JobChange;
import io.github.seamstead.geometry.layout.LayoutResult;
import io.github.seamstead.geometry.layout.Shortfall;
import io.github.seamstead.geometry.layout.StockNeed;
import io.github.seamstead.geometry.stock.Roll;
import io.github.seamstead.geometry.stock.Sheet;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is said where cloth is short: two rectangles of 2 m by 1 m and one of 0.5 m by 1 m lack. */
class ShortClothByHandTest {

  private static final StockNeed SHEETS = new StockNeed("tarp", 3, 0, 0);
  private static final StockNeed PRICED_SHEETS = new StockNeed("tarp", 3, 0, 45);
  private static final StockNeed ROLL = new StockNeed("green", 1, 2.5, 0);
  private static final StockNeed PRICED_ROLL = new StockNeed("green", 1, 2.5, 30);

  private static LayoutPart part(List<StockNeed> needs, Optional<Savings> savings) {
    LayoutResult result =
        new LayoutResult(
            List.of(),
            List.of(
                new Shortfall("a", 2, Shortfall.Reason.STOCK_USED_UP, false, "piece a lacks"),
                new Shortfall("b", 1, Shortfall.Reason.STOCK_USED_UP, false, "piece b lacks")),
            needs,
            0,
            0,
            0,
            0,
            0,
            0,
            0,
            LayoutResult.Method.SEARCH,
            0,
            Optional.empty());
    return new LayoutPart(
        List.of(Sheet.of("tarp", Outline.rectangle(3, 2)), Roll.of("green", 1.5, 20)),
        Map.of("a", Outline.rectangle(2, 1), "b", Outline.rectangle(0.5, 1)),
        result,
        savings);
  }

  private static List<String> advice(StockNeed... needs) {
    return ShortCloth.advice(part(List.of(needs), Optional.empty()), UnitSystem.METRIC).stream()
        .map(line -> line.replace('\u00a0', ' '))
        .toList();
  }

  private static ClothSaving saving(
      String name, double saved, int lacking, double area, List<StockNeed> needs, String... unmet) {
    return new ClothSaving(
        new ClothLever(name, "its price", List.of(JobChange.none("cover.cap"))),
        saved,
        lacking,
        area,
        needs,
        List.of(unmet));
  }

  @Test
  void whatLacksIsCounted() {
    LayoutPart part = part(List.of(), Optional.empty());
    assertThat(part.withoutPlace()).isEqualTo(3);
    assertThat(part.areaWithoutPlace()).isEqualTo(2 * 2.0 + 0.5);
  }

  @Test
  void whatToFetchIsSaidWithItsPrice() {
    assertThat(advice()).isEmpty();
    assertThat(advice(PRICED_ROLL, PRICED_SHEETS))
        .containsExactly(
            "Buy besides: 2.500 m more of green, 1.500 m wide, and 3 more of tarp, for 75.00.");
    assertThat(advice(PRICED_ROLL, SHEETS))
        .containsExactly(
            "Needed besides: 2.500 m more of green, 1.500 m wide, and 3 more of tarp; what has a"
                + " price comes to 30.00, and the rest must be found: nothing with a price takes"
                + " these pieces.");
    assertThat(advice(ROLL))
        .containsExactly(
            "Buy besides, of this or a like width: 2.500 m more of green, 1.500 m wide; no price is"
                + " stated.");
    assertThat(advice(SHEETS))
        .containsExactly("Needed besides, if more like it can be had: 3 more of tarp.");
    assertThat(advice(ROLL, SHEETS))
        .containsExactly(
            "Needed besides, if more like it can be had: 2.500 m more of green, 1.500 m wide, and 3"
                + " more of tarp.");
  }

  private static String best(ClothSaving... tried) {
    List<String> lines =
        ShortCloth.advice(
            part(List.of(), Optional.of(new Savings(List.of(tried), List.of()))),
            UnitSystem.METRIC);
    return String.join("\n", lines).replace('\u00a0', ' ');
  }

  @Test
  void theBestChangeIsSaid() {
    assertThat(best()).isEmpty();
    assertThat(best(saving("No skirt", 1, 0, 0, List.of())))
        .isEqualTo(
            "Or save cloth instead: No skirt is enough; the other changes that were planned are in"
                + " the chapter on cutting.");
    assertThat(best(saving("No skirt", 1, 1, 0.5, List.of())))
        .startsWith("Or save cloth instead: No skirt leaves 1 piece, 0.50 m²; ");
    assertThat(best(saving("No skirt", 1, 2, 0.5, List.of())))
        .startsWith("Or save cloth instead: No skirt leaves 2 pieces, 0.50 m²; ");
    assertThat(best(saving("No skirt", 1, 0, 0, List.of(), "a door")))
        .startsWith("Or save cloth instead: No skirt leaves nothing; ");
  }

  @Test
  void whatIsThenToFetchIsSaidInFewWords() {
    ShortCloth cloth =
        new ShortCloth(part(List.of(), Optional.empty()), new Words(UnitSystem.METRIC));
    assertThat(cloth.fetch(saving("x", 0, 0, 0, List.of()))).isEqualTo("nothing");
    assertThat(cloth.fetch(saving("x", 0, 1, 1, List.of()))).isEqualTo("not known");
    assertThat(cloth.fetch(saving("x", 0, 1, 1, List.of(SHEETS, ROLL))).replace('\u00a0', ' '))
        .isEqualTo("3 of tarp, 2.500 m of green");
    assertThat(cloth.fetch(saving("x", 0, 1, 1, List.of(PRICED_SHEETS, PRICED_ROLL))))
        .endsWith(" of green: 75.00");
  }

  /** Enough alone, then what asks for nothing else, then the least lack, then the most saved. */
  @Test
  void savingsStandInTheOrderOfTheirWorth() {
    ClothSaving more = saving("more", 2, 0, 0, List.of());
    ClothSaving less = saving("less", 1, 0, 0, List.of());
    ClothSaving little = saving("little", 1, 1, 0.5, List.of());
    ClothSaving much = saving("much", 3, 2, 1.5, List.of());
    ClothSaving unmet = saving("unmet", 4, 0, 0, List.of(), "a door");
    List<ClothSaving> tried = new ArrayList<>(List.of(unmet, much, little, less, more));
    tried.sort(Savings.MOST_SAVED_FIRST);
    assertThat(tried).containsExactly(more, less, little, much, unmet);
    assertThat(new Savings(tried, List.of()).enough()).containsExactly(more, less);
    assertThat(unmet.isEnough()).isFalse();
  }
}
