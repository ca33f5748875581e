package io.github.seamstead.examples.lessons;

import java.util.List;

/** The lessons in the order of the work: one shelter from its floor plan to its cracks. */
public final class Lessons {

  private static final List<Lesson> ALL =
      List.of(
          PolygonLesson.lesson(),
          PyramidLesson.lesson(),
          FlatPanelLesson.lesson(),
          CompoundCutLesson.lesson(),
          BarLesson.lesson(),
          SurveyLesson.lesson(),
          AllowanceLesson.lesson(),
          JoinOrderLesson.lesson(),
          JarLesson.lesson(),
          SandLesson.lesson(),
          HeapLesson.lesson(),
          CrackLesson.lesson(),
          UncertaintyLesson.lesson(),
          LeastLesson.lesson(),
          FairTestLesson.lesson());

  private Lessons() {}

  /**
   * Lists the lessons.
   *
   * @return all lessons, first to last
   */
  public static List<Lesson> all() {
    return ALL;
  }
}
