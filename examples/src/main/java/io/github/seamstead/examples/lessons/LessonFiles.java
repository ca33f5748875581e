package io.github.seamstead.examples.lessons;

import java.util.LinkedHashMap;
import java.util.Map;

/** The folder for a class: the sheets of each lesson and one teacher's book. */
public final class LessonFiles {

  /** The most sheets of a lesson. */
  public static final int MOST_PUPILS = 40;

  /** The greatest seed. */
  public static final long GREATEST_SEED = 1_000_000;

  private LessonFiles() {}

  /**
   * Writes all files.
   *
   * @param seed draws the numbers, 0 to {@value #GREATEST_SEED}
   * @param pupils sheets of each lesson, 1 to {@value #MOST_PUPILS}
   * @param paper what they are printed on
   * @return the pages by file name
   */
  public static Map<String, String> of(long seed, int pupils, Paper paper) {
    Map<String, String> files = new LinkedHashMap<>();
    for (int i = 0; i < Lessons.all().size(); i++) {
      files.put(Parts.file(i, "sheets"), PupilSheets.html(i, seed, pupils, paper));
    }
    files.put("teacher.html", TeacherBook.html(seed, pupils, paper));
    return files;
  }
}
