package io.github.seamstead.api.book.front;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StartSheetTest {

  @Test
  void theLoftStartsWithItsSizesWeeksMoneyAndDoubts() {
    Desk desk = Sheets.of("seed-loft");
    String text = Sheets.text(desk, "Start here");
    // Base side and opening as the document states them; across corners 1.6 / sin(15 deg).
    assertThat(text)
        .contains("1.600\u00a0m")
        .contains("6.182\u00a0m across corners")
        .contains("opening 0.700\u00a0m")
        .contains("high")
        .contains("hip 4.07");
    assertThat(text).contains("crew of 6").contains("weeks");
    // 4.1 t at 24 and 5.8 t at 21 a tonne.
    assertThat(text).contains("220.2 in the money of the job; no price: ");
    assertThat(text).contains("washed-sand 4.10\u00a0t").contains("gravel-8-16 5.80\u00a0t");
    assertThat(text).contains(desk.plan().unmet().isEmpty() ? "Fits:" : "Does not fit:");
    assertThat(text).contains("To buy:").contains("Test first:");
    assertThat(text).contains("Tape the frame before cutting").contains("Tiles of coat");
    assertThat(desk.sheets().get(0).body().toString()).contains("href=\"#sheet-safety\"");
  }

  @Test
  void whatCannotBeMetIsSaidOnTheFirstSheet() {
    Desk desk = Sheets.of("hill-hide-blunder");
    String text = Sheets.text(desk, "Start here");
    assertThat(text).contains(desk.plan().unmet().isEmpty() ? "Fits:" : "Does not fit:");
  }

  @Test
  void aModelSaysItsScaleInItsOwnUnits() {
    String text = Sheets.text(Sheets.of("class-model"), "Start here");
    assertThat(text)
        .contains("240\u00a0mm")
        .contains("107\u00a0g")
        .contains("10 times as large")
        .contains("2.400\u00a0m");
    assertThat(text).doesNotContain("pegs 5").doesNotContain("The weeks");
  }
}
