package io.github.seamstead.api.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** From a file to a record, or to all its faults. */
final class FileText {

  private FileText() {}

  /** Reads a whole file that is not too large. */
  static byte[] bytes(Path file) {
    String name = String.valueOf(file.getFileName());
    if (!Files.exists(file)) {
      throw fault("no file " + name, "must be a file that exists");
    }
    if (!Files.isRegularFile(file)) {
      throw fault(name + ", which is not a file", "must be a JSON file");
    }
    try {
      long size = Files.size(file);
      if (size > JobReader.LARGEST_BYTES) {
        throw fault(
            name + " of " + size + " bytes",
            "must be at most " + JobReader.LARGEST_BYTES + " bytes");
      }
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw fault(name + ", which cannot be read", "must be a readable file");
    }
  }

  /** Reads a text by a shape. */
  static <R> R read(byte[] utf8, Shape<R> shape, Walk walk) {
    if (utf8.length > JobReader.LARGEST_BYTES) {
      throw fault(
          "a text of " + utf8.length + " bytes",
          "must be at most " + JobReader.LARGEST_BYTES + " bytes");
    }
    Json json = JsonText.read(utf8, walk);
    R read = json == null ? null : shape.read(json, "$", walk);
    if (read == null || !walk.isClean()) {
      throw new JobFaultsException(walk.faults());
    }
    return read;
  }

  private static JobFaultsException fault(String given, String allowed) {
    return new JobFaultsException(List.of(new JobFault("$", 0, given, allowed)));
  }
}
