package io.github.seamstead.api.job;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * Reads job documents. Costs time linear in the text; a text of more than 4 MiB is refused before
 * it is read.
 *
 * <pre>{@code
 * try {
 *   JobReader.parse("{\"seamstead\": 2, \"frame\": {\"sides\": 2}}");
 * } catch (JobFaultsException e) {
 *   e.faults().get(0).path(); // $.frame.sides
 * }
 * }</pre>
 */
public final class JobReader {

  /** The largest document that is read, in bytes: far beyond any job, far below any harm. */
  public static final long LARGEST_BYTES = 4L * 1024 * 1024;

  private JobReader() {}

  /**
   * Reads a document from a file.
   *
   * @param file a JSON file in UTF-8, or a pipe that gives one
   * @return the job
   * @throws JobFaultsException with all faults, if there are any; also if the file is too large
   * @throws JobFileException if the file cannot be read
   */
  public static Job read(Path file) {
    return parse(FileText.bytes(file));
  }

  /**
   * Reads a document from a stream, such as the standard input, up to its end.
   *
   * @param utf8 gives a JSON text in UTF-8; not closed
   * @return the job
   * @throws JobFaultsException with all faults, if there are any; also if the text is too large
   * @throws IOException if the stream cannot be read
   */
  public static Job read(InputStream utf8) throws IOException {
    return parse(FileText.bytes(utf8));
  }

  /**
   * Reads a document from bytes.
   *
   * @param utf8 a JSON text in UTF-8
   * @return the job
   * @throws JobFaultsException with all faults, if there are any
   */
  public static Job parse(byte[] utf8) {
    return Job.read(utf8);
  }

  /**
   * Reads a document from a text.
   *
   * @param json a JSON text
   * @return the job
   * @throws JobFaultsException with all faults, if there are any
   */
  public static Job parse(String json) {
    return parse(json.getBytes(StandardCharsets.UTF_8));
  }
}
