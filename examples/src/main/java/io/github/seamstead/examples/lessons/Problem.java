package io.github.seamstead.examples.lessons;

/** A kind of question: the same sum with any numbers. */
@FunctionalInterface
interface Problem {

  /** Writes the task on a sheet. */
  Task on(Sheet sheet);

  /** The task with the numbers of the shelter that all lessons build. */
  default Task ofShelter() {
    return on(new Sheet(Draws.ofShelter()));
  }

  /** The task with the numbers of a seed. */
  default Task ofSeed(long seed) {
    return on(new Sheet(Draws.ofSeed(seed)));
  }

  /** The first task from a seed on that has a usual mistake to find. */
  default Task withSlip(long seed) {
    for (long next = seed; next < seed + 100; next++) {
      Task task = ofSeed(next);
      if (!task.slips().isEmpty()) {
        return task;
      }
    }
    throw new IllegalStateException("no telling mistake in 100 draws");
  }
}
