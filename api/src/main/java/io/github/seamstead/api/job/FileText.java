package io.github.seamstead.api.job;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** From a file to a record, or to all its faults. */
final class FileText {

  private FileText() {}

  /** Reads a whole file that is not too large; a pipe as well, which has no size beforehand. */
  static byte[] bytes(Path file) {
    byte[] content;
    try {
      if (Files.isDirectory(file)) {
        throw new FileSystemException(file.toString(), null, "it is a folder, not a JSON file");
      }
      if (Files.isRegularFile(file) && Files.size(file) > JobReader.LARGEST_BYTES) {
        throw tooLarge(file, Files.size(file) + " bytes");
      }
      try (InputStream in = Files.newInputStream(file)) {
        content = in.readNBytes((int) JobReader.LARGEST_BYTES + 1);
      }
    } catch (IOException e) {
      throw new JobFileException(file, e);
    }
    if (content.length > JobReader.LARGEST_BYTES) {
      throw tooLarge(file, "more");
    }
    return content;
  }

  /** Reads a whole stream that is not too large. */
  static byte[] bytes(InputStream in) throws IOException {
    byte[] content = in.readNBytes((int) JobReader.LARGEST_BYTES + 1);
    if (content.length > JobReader.LARGEST_BYTES) {
      throw fault("a text without an end", "must be at most " + JobReader.LARGEST_BYTES + " bytes");
    }
    return content;
  }

  private static JobFaultsException tooLarge(Path file, String size) {
    return fault(
        file.getFileName() + " of " + size,
        "must be at most " + JobReader.LARGEST_BYTES + " bytes");
  }

  /** Reads a text as a tree. */
  static Json json(byte[] utf8, Walk walk) {
    if (utf8.length > JobReader.LARGEST_BYTES) {
      throw fault(
          "a text of " + utf8.length + " bytes",
          "must be at most " + JobReader.LARGEST_BYTES + " bytes");
    }
    Json json = JsonText.read(utf8, walk);
    if (json == null) {
      throw new JobFaultsException(walk.faults());
    }
    return json;
  }

  /** Reads a text by a shape. */
  static <R> R read(byte[] utf8, Shape<R> shape, Walk walk) {
    return read(json(utf8, walk), shape, walk);
  }

  /** Reads a tree by a shape. */
  static <R> R read(Json json, Shape<R> shape, Walk walk) {
    R read = Forms.enter(json, walk) ? shape.read(json, "$", walk) : null;
    if (read == null || !walk.isClean()) {
      throw new JobFaultsException(walk.faults());
    }
    return read;
  }

  private static JobFaultsException fault(String given, String allowed) {
    return new JobFaultsException(List.of(new JobFault("$", 0, given, allowed)));
  }
}
