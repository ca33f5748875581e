package io.github.seamstead.api.chapter;

import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.shared.check.Args;
import java.util.Optional;

/**
 * Something that the job asks for and that cannot be met as stated, such as panels that the stock
 * does not hold, or a door that leaves its face.
 *
 * @param chapter the chapter
 * @param what what is missing and how much; not blank
 * @param fault the value of the document that it follows from, if it is a single one
 */
public record Unmet(Chapter chapter, String what, Optional<JobFault> fault) {

  public Unmet {
    Args.notBlank("what", what);
  }

  /**
   * Says what is missing.
   *
   * @param chapter the chapter
   * @param what what is missing and how much; not blank
   * @return the lack
   */
  public static Unmet of(Chapter chapter, String what) {
    return new Unmet(chapter, what, Optional.empty());
  }

  /**
   * Says which value cannot be met; nothing that builds on the chapter is planned then.
   *
   * @param chapter the chapter
   * @param fault the value, what it says and what it must be
   * @return the lack
   */
  public static Unmet at(Chapter chapter, JobFault fault) {
    return new Unmet(chapter, fault.text(), Optional.of(fault));
  }
}
