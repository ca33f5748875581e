package io.github.seamstead.examples.lessons;

import java.util.List;

/** The lessons in the order of the work. */
public final class Lessons {

  private Lessons() {}

  /**
   * Lists the lessons.
   *
   * @return all lessons, first to last
   */
  public static List<Lesson> all() {
    return List.of(
        new PolygonLesson(),
        new PyramidLesson(),
        new ApexAngleLesson(),
        new CompoundCutLesson(),
        new BarLesson(),
        new SurveyLesson(),
        new MitreLesson(),
        new JoinOrderLesson(),
        new JarLesson(),
        new SandLesson(),
        new OrderLesson(),
        new DryingLesson());
  }
}
