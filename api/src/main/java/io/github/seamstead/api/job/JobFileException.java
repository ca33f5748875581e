package io.github.seamstead.api.job;

import io.github.seamstead.shared.text.Escapes;
import io.github.seamstead.shared.text.IoReason;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/**
 * A file that cannot be read: it is missing, a folder, locked, or the disk fails. This is no fault
 * of the document in it, which may well be sound; see {@link JobFaultsException} for those.
 */
public final class JobFileException extends UncheckedIOException {

  private static final long serialVersionUID = 1L;

  /** The file as it was named. */
  private final String file;

  /**
   * Creates the exception.
   *
   * @param path the file, as the caller named it
   * @param cause why it cannot be read
   */
  public JobFileException(Path path, IOException cause) {
    super(Escapes.terminal(path.toString()) + " cannot be read: " + IoReason.of(cause), cause);
    this.file = path.toString();
  }

  /**
   * Names the file.
   *
   * @return the path as the caller named it
   */
  public Path path() {
    return Path.of(file);
  }
}
