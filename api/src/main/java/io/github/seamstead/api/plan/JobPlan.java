package io.github.seamstead.api.plan;

import io.github.seamstead.api.job.Assumption;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.derivation.Derivation;
import java.util.List;

/**
 * All results of one run, as the modules gave them, in the order of the work.
 *
 * @param job the job as it was read
 * @param notPlanned chapters left out, and why
 * @param assumptions every value that the document leaves out and the plan took from elsewhere
 * @param cautions every caution, each once
 * @param derivations the worked steps of each calculation; empty unless asked for
 */
public record JobPlan(
    Job job,
    List<NotPlanned> notPlanned,
    List<Assumption> assumptions,
    List<Caution> cautions,
    List<Derivation> derivations) {

  /**
   * Copies the lists.
   *
   * @param job the job as it was read
   * @param notPlanned chapters left out
   * @param assumptions values taken from elsewhere
   * @param cautions every caution
   * @param derivations worked steps
   */
  public JobPlan {
    notPlanned = List.copyOf(notPlanned);
    assumptions = List.copyOf(assumptions);
    cautions = List.copyOf(cautions);
    derivations = List.copyOf(derivations);
  }
}
