package io.github.seamstead.api.chapter;

import io.github.seamstead.shared.check.Args;

/**
 * A chapter that the plan leaves out, and why.
 *
 * @param chapter the chapter
 * @param reason what the document lacks, or what failed; not blank
 */
public record NotPlanned(Chapter chapter, String reason) {

  public NotPlanned {
    Args.notBlank("reason", reason);
  }
}
