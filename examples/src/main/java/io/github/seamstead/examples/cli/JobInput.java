package io.github.seamstead.examples.cli;

import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** The job document that a command is given: a file, or a dash for the standard input. */
final class JobInput {

  private static final String STANDARD_INPUT = "-";

  private JobInput() {}

  static boolean isStandardInput(Path file) {
    return file.toString().equals(STANDARD_INPUT);
  }

  static Job read(Path file) {
    if (!isStandardInput(file)) {
      return JobReader.read(file);
    }
    try {
      return JobReader.read(System.in);
    } catch (IOException e) {
      throw new UncheckedIOException("the standard input cannot be read", e);
    }
  }
}
