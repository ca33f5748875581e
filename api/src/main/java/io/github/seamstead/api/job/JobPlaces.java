package io.github.seamstead.api.job;

import java.util.Optional;
import java.util.function.BiConsumer;

/** The places of a job document at which values may stand. */
final class JobPlaces {

  private final Json job;

  JobPlaces(Json job) {
    this.job = job;
  }

  /**
   * Gives the kind of value that a job document could hold at a place, if this one holds the list
   * items called.
   *
   * @param path the place
   * @param fault receives what is given and what to write instead, if no value could stand there
   * @return the kind; empty after a fault
   */
  Optional<Kind<?>> kind(DraftPath path, BiConsumer<String, String> fault) {
    Kind<?> kind = JobDraft.shape();
    for (int i = 0; i < path.steps().size(); i++) {
      String step = path.steps().get(i);
      DraftPath before = new DraftPath(path.steps().subList(0, i));
      DraftPath here = new DraftPath(path.steps().subList(0, i + 1));
      boolean item = step.startsWith("[");
      Optional<Kind<?>> next = DraftPath.next(kind, step);
      if (next.isEmpty()) {
        fault.accept("\"" + here.text() + "\"", unknown(kind, before, step, item));
        return Optional.empty();
      }
      if (item && here.find(job) == null) {
        fault.accept("\"" + here.text() + "\"", "is not in the job; " + items(before));
        return Optional.empty();
      }
      kind = next.get();
    }
    return Optional.of(kind);
  }

  private static String unknown(Kind<?> kind, DraftPath before, String step, boolean item) {
    String place = before.steps().isEmpty() ? "a job" : before.text();
    if (!kind.keys().isEmpty() && !item) {
      String hint =
          Nearest.to(step, kind.keys()).map(n -> "did you mean \"" + n + "\"? ").orElse("");
      return hint + place + " has: " + String.join(", ", kind.keys());
    }
    if (kind.item().isPresent()) {
      return place + " is a list; call an item as in " + place + "[0]";
    }
    return place + " holds " + (item ? "no list" : "no keys");
  }

  private String items(DraftPath list) {
    return list.find(job) instanceof Json.Arr array
        ? list.text() + " has the items [0] to [" + (array.items().size() - 1) + "]"
        : "the job has no " + list.text();
  }
}
