package io.github.seamstead.api.chapter.cover;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.geometry.pattern.PaperSize;
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
        .contains("width=\"210mm\" height=\"297mm\" viewBox=\"0 0 210 297\"")
        .contains("@page{size:A4")
        .contains("sheet 1 of ")
        .doesNotContain("NaN")
        .doesNotContain("<script");
  }

  @Test
  void aShelterIsMarkedOutWithATapeInstead() {
    assertThat(PrintSheets.html(cover("seed-loft"), PaperSize.LETTER)).isEmpty();
  }
}
