package io.github.seamstead.examples.cli;

import io.github.seamstead.api.book.BookFolder;
import io.github.seamstead.shared.check.ArgumentFault;
import java.nio.file.Files;
import java.nio.file.Path;

/** What a command may write to, asked before any work is done. */
final class Outputs {

  private Outputs() {}

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
