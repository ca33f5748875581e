package io.github.seamstead.api.chapter.internal;

import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.shared.check.ArgumentFault;

/** What a module says of a value as a fault of the document: what was given, and what must be. */
final class Refusal {

  /** What was given reads well before the name of the argument up to this many characters. */
  private static final int PLAIN_GIVEN = 40;

  private Refusal() {}

  /** Writes a refusal as a fault at a place of the job. */
  static JobFault of(Job job, String path, ArgumentFault refused) {
    String given = refused.given();
    if (!refused.name().isEmpty()) {
      boolean plain = given.length() <= PLAIN_GIVEN && given.indexOf(',') < 0;
      given = plain ? given + " for " + refused.name() : refused.name() + ": given " + given;
    }
    boolean more = !refused.advice().isEmpty() && !refused.advice().equals(refused.allowed());
    String allowed = more ? refused.allowed() + "; " + refused.advice() : refused.allowed();
    return job.fault(path, given, allowed);
  }
}
