package io.github.seamstead.api.job;

import java.util.Set;

/** Writes a diary as the document that {@link DiaryReader} reads. */
public final class DiaryWriter {

  private DiaryWriter() {}

  /**
   * Writes a diary. Numbers are written in SI with all their digits, so that the same diary is read
   * again; a reading that was written with its doubt keeps its own text.
   *
   * @param diary the diary; at least one line
   * @return JSON text that ends with a line break
   */
  public static String text(Diary diary) {
    DiaryShapes.DiaryDocument document =
        new DiaryShapes.DiaryDocument(
            Forms.NEWEST,
            diary.job(),
            diary.effort(),
            diary.seed(),
            diary.lines().stream().map(DiaryRow::of).toList());
    return JobWriter.text(DiaryShapes.diaryDocument().write(document, "$", Set.of()));
  }
}
