package io.github.seamstead.api.job;

import io.github.seamstead.shared.check.Args;
import java.util.List;
import java.util.stream.Collectors;

/** A job document that cannot be used, with all its faults. */
public final class JobFaultsException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /** All faults, in the order of the document. */
  private final JobFault[] faults;

  /**
   * Creates the exception.
   *
   * @param faults all faults found, in the order of the document; at least one
   * @throws IllegalArgumentException if there is none
   */
  public JobFaultsException(List<JobFault> faults) {
    super(faults.stream().map(JobFault::text).collect(Collectors.joining("\n")));
    this.faults = Args.notEmpty("faults", faults).toArray(JobFault[]::new);
  }

  /**
   * Lists the faults.
   *
   * @return at least one, in the order of the document
   */
  public List<JobFault> faults() {
    return List.of(faults);
  }
}
