package io.github.seamstead.api.diary;

import java.util.List;

/**
 * What differs between two plans by more than its tolerance.
 *
 * <pre>{@code
 * JobDraft draft = JobDraft.read(Path.of("jobs/class-model.json"));
 * JobChange wider = JobChange.quantity("frame.measures.baseSide", 0.25, "m");
 * JobPlan before = JobPlanner.plan(draft.job(), PlanOptions.defaults());
 * JobPlan after = JobPlanner.plan(draft.with(List.of(wider)).job(), PlanOptions.defaults());
 * PlanChanges changes = JobPlanner.changes(before, after);
 * changes.reasons().size(); // 1
 * }</pre>
 *
 * @param reasons what happened between the two: lines of the diary, or values of the documents that
 *     differ
 * @param changes each thing that differs, in the order of the work
 */
public record PlanChanges(List<Reason> reasons, List<Change> changes) {

  public PlanChanges {
    reasons = List.copyOf(reasons);
    changes = List.copyOf(changes);
  }

  /** What may change. */
  public enum Kind {
    /** A piece: its shape, its place on the cloth, or whether it is cut. */
    PIECE("piece"),
    /** A seam of the ring: its length, or whether it is made. */
    SEAM("seam"),
    /** Something to order. */
    ORDER("order"),
    /** Work of the crew. */
    HOURS("hours"),
    /** A day on which something is reached. */
    DATE("date"),
    /** Something that cannot be met. */
    UNMET("unmet");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /**
     * Gives the kind's name in data.
     *
     * @return one word
     */
    public String word() {
      return word;
    }
  }

  /**
   * Something that happened between the two plans.
   *
   * @param text in words
   * @param touches what it can change
   */
  public record Reason(String text, List<Kind> touches) {

    public Reason {
      touches = List.copyOf(touches);
    }
  }

  /**
   * One thing that differs.
   *
   * @param kind what it is
   * @param name which it is
   * @param before as it was, in words
   * @param after as it is now, in words
   * @param done whether it is cut, joined or laid, so that it must not change
   * @param because what happened that can have changed it
   */
  public record Change(
      Kind kind, String name, String before, String after, boolean done, List<String> because) {

    public Change {
      because = List.copyOf(because);
    }

    /**
     * Says the change in one line.
     *
     * @return for example {@code piece 3-1: uncut, now cut}
     */
    public String text() {
      return kind.word() + " " + name + ": " + before + ", now " + after;
    }
  }

  /**
   * Gives the changes of one kind.
   *
   * @param kind the kind
   * @return the changes, in their order
   */
  public List<Change> of(Kind kind) {
    return changes.stream().filter(c -> c.kind() == kind).toList();
  }
}
