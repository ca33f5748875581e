package io.github.seamstead.examples.cli;

import io.github.seamstead.api.files.BookFolder;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.text.IoReason;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What a command may write to, asked before any work is done. */
final class Outputs {

  private Outputs() {}

  /** What writes an output. */
  interface Writing {
    void write() throws IOException;
  }

  /** Writes an output; a failure says what could not be written, where and why. */
  static void written(String what, Path out, Writing writing) {
    try {
      writing.write();
    } catch (IOException e) {
      throw new UncheckedIOException(
          what + " cannot be written to " + out + ": " + IoReason.of(e), e);
    }
  }

  /** Refuses a folder that is not new, empty or made by an earlier run, or that holds an input. */
  static void folder(Path out, Path... read) {
    BookFolder.refusal(out, read)
        .ifPresent(
            why -> {
              throw ArgumentFault.finding("--out: " + why);
            });
  }

  /** Refuses what exists. */
  static void fresh(Path out) {
    if (Files.exists(out)) {
      throw ArgumentFault.finding(
          "--out: given " + out + ", which exists", "name a new one or remove it first");
    }
  }
}
