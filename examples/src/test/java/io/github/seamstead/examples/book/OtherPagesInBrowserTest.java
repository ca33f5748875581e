package io.github.seamstead.examples.book;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Tag;

/** The demos and pages that {@link BookInBrowserTest} leaves out, which take minutes. */
@Tag("long")
class OtherPagesInBrowserTest extends PagesInBrowser {

  @Override
  List<String> jobs() throws IOException {
    return demos().stream().filter(job -> !BookInBrowserTest.JOBS.contains(job)).toList();
  }

  /** Metric and imperial: worked steps look alike in the others. */
  @Override
  List<String> worked() {
    return List.of("seed-loft", "hill-hide");
  }

  @Override
  List<String> alone() {
    return List.of("reference", "teacher");
  }
}
