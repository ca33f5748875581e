package io.github.seamstead.shared.text;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Locale;

/** Why a file could not be read or written, in plain words. */
public final class IoReason {

  private IoReason() {}

  /**
   * Puts a failure in plain words. What the system itself says is kept where there is no plainer
   * word, such as {@code No space left on device}.
   *
   * @param failure the failure
   * @return a phrase without a full stop, for example {@code no right to use locked/book}; harmless
   *     on a terminal
   */
  public static String of(IOException failure) {
    return Escapes.terminal(phrase(failure));
  }

  private static String phrase(IOException failure) {
    if (failure instanceof FileSystemException e) {
      return phrase(e);
    }
    String said = failure.getMessage();
    return said == null || said.isBlank() ? failure.getClass().getSimpleName() : plain(said);
  }

  private static String phrase(FileSystemException failure) {
    String file = String.valueOf(failure.getFile());
    if (failure instanceof AccessDeniedException) {
      return "no right to use " + file;
    }
    if (failure instanceof NoSuchFileException) {
      return "there is no " + file;
    }
    if (failure instanceof FileAlreadyExistsException
        || failure instanceof DirectoryNotEmptyException) {
      return file + " is there already";
    }
    if (failure instanceof NotDirectoryException) {
      return file + " is not a folder";
    }
    if (failure instanceof FileSystemLoopException) {
      return file + " is a link that leads back to itself";
    }
    String reason = failure.getReason();
    return reason == null || reason.isBlank() ? file : plain(reason) + ": " + file;
  }

  /** The system's own words start like a sentence, but stand within one here. */
  private static String plain(String said) {
    return said.substring(0, 1).toLowerCase(Locale.ROOT) + said.substring(1);
  }
}
