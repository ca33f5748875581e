package io.github.seamstead.page.face;

import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;

/** What the tests of the face share: one browser for each class, with a folder of its own. */
@Tag("browser")
abstract class InBrowser {

  @TempDir private static Path folder = Path.of("");
  private static @Nullable Face started;

  @BeforeAll
  static void startBrowser() throws IOException, InterruptedException {
    started = Face.start(folder);
  }

  @AfterAll
  static void stopBrowser() {
    if (started != null) {
      started.close();
      started = null;
    }
  }

  /** The page in the browser of this class. */
  static Face face() {
    if (started == null) {
      throw new IllegalStateException("no browser");
    }
    return started;
  }

  /** Where a test may write. */
  static Path folder() {
    return folder;
  }
}
