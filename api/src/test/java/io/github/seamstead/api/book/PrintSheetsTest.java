package io.github.seamstead.api.book;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.geometry.drawing.PaperSize;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PrintSheetsTest {

  private static CoverPart cover(String job) {
    return DemoJobs.plan(job).cover().orElseThrow();
  }

  @Test
  void aModelIsPrintedTrueToSize() {
    Optional<String> page = PrintSheets.html(cover("class-model"), PaperSize.A4);
    assertThat(page).isPresent();
    assertThat(page.get())
        .contains("class=\"turned\" width=\"297mm\" height=\"210mm\" viewBox=\"0 0 297 210\"")
        .contains("@page{size:A4")
        .contains("sheet 1 of ")
        .doesNotContain("NaN")
        .doesNotContain("<script");
  }

  /** A class prints a panel on two sheets and finds them by number on a map. */
  @Test
  void aPanelOfTheModelTakesTwoSheets() {
    String page = PrintSheets.html(cover("class-model"), PaperSize.A4).orElseThrow();
    assertThat(page)
        .contains("2 sheets of A4", "Map of the sheets", "sheet 2 of 2")
        .contains(">1</text>", ">2</text>")
        .doesNotContain("sheet 3 of");
    assertThat(page.split("<svg", -1)).hasSize(1 + 1 + 2);
  }

  @Test
  void aShelterIsMarkedOutWithATapeInstead() {
    assertThat(PrintSheets.html(cover("seed-loft"), PaperSize.LETTER)).isEmpty();
  }
}
