package io.github.seamstead.examples.cli;

import io.github.seamstead.shared.text.IoReason;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;

/**
 * The standard output, which remembers why it could not be written: a print writer over it swallows
 * that, and a result that was lost must not pass for one that was printed.
 */
final class StandardOutput extends OutputStream {

  private final OutputStream to;
  private @Nullable IOException failure;

  StandardOutput() {
    this(new FileOutputStream(FileDescriptor.out));
  }

  StandardOutput(OutputStream to) {
    this.to = to;
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int length) throws IOException {
    try {
      to.write(bytes, from, length);
    } catch (IOException e) {
      failure = failure == null ? e : failure;
      throw e;
    }
  }

  /** The exit code, and a word on the error output, when all was written that could be. */
  int outcome(int code, PrintWriter err) {
    IOException failed = failure;
    if (failed == null || isReaderGone(failed)) {
      return code;
    }
    err.println("the output could not be written: " + IoReason.of(failed));
    err.flush();
    return Failures.BAD_INPUT;
  }

  /** Who reads the first lines alone, as head does, has lost nothing. */
  private static boolean isReaderGone(IOException failed) {
    return String.valueOf(failed.getMessage()).contains("Broken pipe");
  }
}
