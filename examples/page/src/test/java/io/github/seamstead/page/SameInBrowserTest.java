package io.github.seamstead.page;

import io.github.seamstead.examples.book.Browser;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Plans jobs here and in a browser, with the same code compiled for both and the same work, and
 * compares results and books.
 */
class SameInBrowserTest {

  private static final int RANDOM = Integer.getInteger("page.random", 200);

  private static @TempDir Path folder;
  private static Optional<Browser> browser = Optional.empty();

  @BeforeAll
  static void open() throws Exception {
    Path program = Browser.orSkip();
    Browser started = Browser.start(program, folder);
    started.open(Same.page(folder));
    browser = Optional.of(started);
  }

  @AfterAll
  static void close() {
    browser.ifPresent(Browser::close);
  }

  @Test
  void demosAreTheSame() throws IOException {
    new Same(SameInBrowserTest::there).demos();
  }

  @Test
  void randomJobsAreTheSame() throws IOException {
    new Same(SameInBrowserTest::there).random(RANDOM);
  }

  private static String there(String request) {
    return browser.orElseThrow().run(Same.script(request)).asText();
  }
}
