package io.github.seamstead.page.face;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.examples.book.Browser;
import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page where the device keeps nothing, or has no room. */
@Tag("browser")
class StorageRefusedTest {

  @TempDir private static Path folder = Path.of("");
  private static @Nullable Face started;

  @BeforeAll
  static void start() throws IOException, InterruptedException {
    started = Face.start(folder);
    started.before(
        "Object.defineProperty(window, 'localStorage',"
            + " {get() { throw new DOMException('refused', 'SecurityError'); }})");
  }

  @AfterAll
  static void stop() {
    if (started != null) {
      started.close();
    }
  }

  private static Face face() {
    if (started == null) {
      throw new IllegalStateException("no browser");
    }
    return started;
  }

  @Test
  void allWorksAndThePageSaysThatNothingIsKept() throws IOException {
    Browser page = face().open(360);
    page.run("hand.type(hand.at('$.site.name'), 'Nowhere'); 0");
    page.run(
        "hand.until(() => /This device keeps nothing: save to a file/.test(hand.text('saved')),"
            + " 'the note')");
    page.run("hand.press('Save')");
    assertThat(face().saved("nowhere.json")).content().contains("\"name\": \"Nowhere\"");
    page.run("hand.type(hand.at('$.site.name'), 'Nowhere else'); 0");
    page.run("hand.go('jobs').then(() => hand.press('Start a job'))");
    assertThat(
            page.run(
                    "hand.until(() => document.querySelector('dialog'), 'the question')"
                        + ".then(box => box.innerText)")
                .asText())
        .contains("Opening another throws them away");
    page.run("hand.press('Go back and save')");
    assertThat(page.run("hand.text('title')").asText()).isEqualTo("Nowhere else");
    assertThat(face().complaints()).isEmpty();
  }
}
