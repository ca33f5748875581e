package io.github.seamstead.api.job;

import java.nio.file.Path;

/**
 * Reads the diary of a job. Costs time linear in the text; a text of more than 4 MiB is refused
 * before it is read.
 */
public final class DiaryReader {

  private DiaryReader() {}

  /**
   * Reads a diary from a file.
   *
   * @param file a JSON file in UTF-8, or a pipe that gives one
   * @return the diary
   * @throws JobFaultsException with all faults, if there are any; also if the file is too large
   * @throws JobFileException if the file cannot be read
   */
  public static Diary read(Path file) {
    return parse(FileText.bytes(file));
  }

  /**
   * Reads a diary from bytes.
   *
   * @param utf8 a JSON text in UTF-8
   * @return the diary
   * @throws JobFaultsException with all faults, if there are any
   */
  public static Diary parse(byte[] utf8) {
    Walk walk = new Walk();
    DiaryShapes.DiaryDocument read = FileText.read(utf8, DiaryShapes.diaryDocument(), walk);
    return new Diary(
        read.job(),
        read.effort(),
        read.seed(),
        read.diary().stream().map(DiaryRow::line).toList(),
        walk.lines());
  }
}
