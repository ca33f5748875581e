package io.github.seamstead.api.chapter.floor;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.book.Book;
import io.github.seamstead.api.testing.DemoJobs;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The hours and the soft ground of demo jobs, which are planned whole. */
@Tag("dear")
class FloorLabourSectionTest {

  private static String page(String job) {
    return Book.of(DemoJobs.plan(job)).html();
  }

  @Test
  void theCrewReadsItsHoursTripsAndWhatMoreAirSaves() {
    String html = page("seed-loft");
    assertThat(html)
        .contains("Hours of the crew")
        .contains("Working days, one layer after the other: ")
        .contains("Barrow trips to the floor")
        .contains("air changes a day, to keep the stated humidity")
        .doesNotContain("times the air over the floor")
        .doesNotContain("Soft ground under the floor");
    // Hours are rough: two figures, with their range.
    assertThat(html)
        .containsPattern(
            "all earth layers</[^>]*>\\s*<td[^>]*>[0-9.]+\u00a0h \\([0-9.]+\u00a0h to"
                + " [0-9.]+\u00a0h");
  }

  @Test
  void softGroundIsBoundedAndAdvisedOn() {
    assertThat(page("clay-bank"))
        .contains("Soft ground under the floor")
        .contains("strip turf and topsoil to subsoil")
        .contains("tilt hearth, posts and floor")
        .doesNotContain("Hours of the crew");
  }
}
