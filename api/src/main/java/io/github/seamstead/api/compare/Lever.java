package io.github.seamstead.api.compare;

import io.github.seamstead.api.job.JobChange;
import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * Something small that a builder can change to save money or hours.
 *
 * @param name what is done, as a builder says it; not blank
 * @param on what it is done to: the cover or the floor
 * @param hours person-hours of own work that the plan does not count; 0 or more
 * @param price what it costs that no number of the plan shows; not blank
 * @param changes the values that state it in the job document; one or more
 */
public record Lever(String name, On on, double hours, String price, List<JobChange> changes) {

  /** What a lever is pulled on. */
  public enum On {
    /** The cover, its frame and stock. */
    COVER("cover"),
    /** The floor and those who lay it. */
    FLOOR("floor");

    private final String word;

    On(String word) {
      this.word = word;
    }

    /**
     * Gives the word for people.
     *
     * @return one word
     */
    public String word() {
      return word;
    }
  }

  public Lever {
    Args.notBlank("name", name);
    Args.notNegative("hours", hours, "h");
    Args.notBlank("price", price);
    Args.require(!changes.isEmpty(), "changes", "none", "must be at least one");
    changes = List.copyOf(changes);
  }
}
