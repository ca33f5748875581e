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

/** The page where the device has no room left. */
@Tag("browser")
class StorageFullTest {

  @TempDir private static Path folder = Path.of("");
  private static @Nullable Face started;

  @BeforeAll
  static void start() throws IOException, InterruptedException {
    started = Face.start(folder);
    started.before(
        "Object.defineProperty(Storage.prototype, 'setItem',"
            + " {value() { throw new DOMException('full', 'QuotaExceededError'); }})");
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
  void aFullStoreIsSaid() throws IOException {
    Browser page = face().open(360);
    page.run("hand.type(hand.at('$.site.name'), 'Too much'); 0");
    page.run("hand.until(() => /There is no room left/.test(hand.text('notes')), 'the note')");
    assertThat(page.run("hand.text('saved')").asText()).contains("This device is full");
    page.run("hand.press('Save')");
    assertThat(face().saved("too-much.json")).content().contains("Too much");
  }
}
