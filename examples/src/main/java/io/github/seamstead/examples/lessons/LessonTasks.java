package io.github.seamstead.examples.lessons;

import java.util.ArrayList;
import java.util.List;

/**
 * The tasks of one lesson for one pupil: two to complete, one with a mistake to find, six to solve.
 *
 * @param oneBlank as the worked example, its last step left out
 * @param twoBlanks the same with other numbers, its last two steps left out
 * @param mistake as the worked example, to be shown with a usual mistake
 * @param exercises two as the example, two of the lesson's other kinds, two of earlier lessons
 */
record LessonTasks(Task oneBlank, Task twoBlanks, Task mistake, List<Exercise> exercises) {

  /** Lessons without two earlier ones practise their own kinds instead. */
  private static final int FIRST_MIXED = 2;

  /**
   * One to solve.
   *
   * @param level where it stands: like the example, another way round, from an earlier lesson
   * @param task the task
   */
  record Exercise(String level, Task task) {}

  /** Draws the tasks: other numbers for each seed and pupil, the same kinds for all pupils. */
  static LessonTasks of(int lesson, long seed, int pupil) {
    List<Lesson> all = Lessons.all();
    List<Problem> own = all.get(lesson).problems();
    long base = (seed * 1000 + pupil) * 1000 + lesson * 20L;
    List<Exercise> exercises = new ArrayList<>();
    exercises.add(new Exercise("like the example", own.get(0).ofSeed(base)));
    exercises.add(new Exercise("like the example", own.get(0).ofSeed(base + 1)));
    exercises.add(new Exercise("another question", own.get(1).ofSeed(base + 2)));
    exercises.add(new Exercise("another question", own.get(own.size() - 1).ofSeed(base + 3)));
    for (int i = 0; i < 2; i++) {
      long numbers = base + 4 + i;
      if (lesson < FIRST_MIXED) {
        Problem again = own.get(1 + i % (own.size() - 1));
        exercises.add(new Exercise("another question", again.ofSeed(numbers)));
      } else {
        int earlier = earlier(lesson, seed, i);
        Problem back = all.get(earlier).problems().get(0);
        exercises.add(new Exercise("from lesson " + (earlier + 1), back.ofSeed(numbers)));
      }
    }
    return new LessonTasks(
        own.get(0).ofSeed(base + 7),
        own.get(0).ofSeed(base + 8),
        own.get(0).withSlip(base + 100_000),
        exercises);
  }

  /** Two different earlier lessons, others for another seed. */
  private static int earlier(int lesson, long seed, int which) {
    long first = Math.floorMod(seed * 7 + lesson * 5L, lesson);
    long apart = 1L + Math.floorMod(seed + lesson, lesson - 1);
    return (int) ((first + which * apart) % lesson);
  }
}
