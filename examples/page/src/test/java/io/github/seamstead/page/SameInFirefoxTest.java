package io.github.seamstead.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** As {@link SameInBrowserTest}, in Firefox; skipped with a message where there is none. */
@Tag("long")
class SameInFirefoxTest {

  private static final int RANDOM = Integer.getInteger("page.random", 200);

  private static @TempDir Path folder;
  private static Optional<Firefox> browser = Optional.empty();

  @BeforeAll
  static void open() throws Exception {
    Optional<Path> program = Firefox.find();
    Assumptions.assumeTrue(
        program.isPresent(),
        "skipped: no firefox-esr or firefox on the path, SEAMSTEAD_FIREFOX not set");
    Firefox started = Firefox.start(program.get(), folder);
    started.open(Same.page(folder));
    browser = Optional.of(started);
  }

  @AfterAll
  static void close() {
    browser.ifPresent(Firefox::close);
  }

  @Test
  void demosAreTheSame() throws IOException {
    new Same(SameInFirefoxTest::there).demos();
  }

  @Test
  void randomJobsAreTheSame() throws IOException {
    new Same(SameInFirefoxTest::there).random(RANDOM);
  }

  /** Unpacked, asked for an example, planned and shown: all from a file. */
  @Test
  void thePageOpensAndPlansFromAFile() {
    Firefox firefox = browser.orElseThrow();
    firefox.open(Path.of("target/seamstead-page.html").toAbsolutePath());
    assertThat(firefox.run(PLAN)).isEqualTo("planned");
    firefox.open(folder.resolve("engine.html"));
  }

  private static final String PLAN =
      "(async () => { const until = async (what, words) => { for (let i = 0; i < 3000; i++) { const"
          + " v = what(); if (v) return v; await new Promise(r => setTimeout(r, 50)); } throw new"
          + " Error('waited in vain: ' + words); }; const named = name =>"
          + " [...document.querySelectorAll('button')].find(b => b.textContent === name &&"
          + " b.checkVisibility() && !b.disabled); await until(() =>"
          + " document.documentElement.dataset.ready, 'the page'); location.hash = '#jobs'; (await"
          + " until(() => named('Classroom model, one to ten'), 'an example')).click(); await"
          + " until(() => document.getElementById('title').textContent === 'Classroom model, one to"
          + " ten', 'the job'); location.hash = '#book'; (await until(() =>"
          + " document.getElementById('plan').checkVisibility() && named('Plan the book'), 'the"
          + " button')).click(); await until(() => document.querySelector('#book"
          + " iframe')?.contentDocument?.body?.dataset.job, 'the book'); return 'planned'; })()";

  private static String there(String request) {
    return browser.orElseThrow().run(Same.script(request));
  }
}
