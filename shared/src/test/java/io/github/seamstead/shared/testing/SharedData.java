package io.github.seamstead.shared.testing;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;

/** Data that lies beside the project and is read there, never copied in. */
public final class SharedData {

  private SharedData() {}

  /**
   * Gives a path in the folder beside the project, or skips the calling test with a clear message.
   *
   * @param relative the path below that folder, such as {@code benchmarks/layout}
   * @return the existing path
   */
  public static Path require(String relative) {
    Path path = Path.of(System.getProperty("seamstead.shared", "../shared")).resolve(relative);
    assumeTrue(
        Files.exists(path), () -> "skipped: " + path.normalize() + " is not beside this checkout");
    return path;
  }
}
