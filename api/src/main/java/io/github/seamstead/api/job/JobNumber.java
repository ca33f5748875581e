package io.github.seamstead.api.job;

import io.github.seamstead.shared.check.Args;
import java.util.Set;

/** A plain number of a job document, which can be put there anew. Immutable. */
public final class JobNumber {

  private final DraftPath path;
  private final Kind<?> kind;
  private final Kind.Limits limits;

  JobNumber(DraftPath path, Kind<?> kind, Kind.Limits limits) {
    this.path = path;
    this.kind = kind;
    this.limits = limits;
  }

  /**
   * Says where it stands, list items by their number from 0.
   *
   * @return for example {@code floor.layers[3].thickness}
   */
  public String path() {
    return path.text();
  }

  /**
   * States another value, held within what the document allows there.
   *
   * @param value the value, in its SI unit
   * @return the change of the document
   * @throws IllegalArgumentException if the value is not finite
   */
  public JobChange put(double value) {
    Args.finite(path(), value, "");
    double held = Math.max(limits.least(), Math.min(limits.greatest(), value));
    return new JobChange(path(), new JobValue(kind.write(held, path(), Set.of())));
  }
}
