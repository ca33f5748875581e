package io.github.seamstead.api.plan;

import io.github.seamstead.shared.check.Args;

/**
 * Something that the job asks for and that cannot be met as stated, such as panels that the stock
 * does not hold.
 *
 * @param chapter the chapter
 * @param what what is missing and how much
 */
public record Unmet(Chapter chapter, String what) {

  /**
   * Checks the words.
   *
   * @param chapter the chapter
   * @param what not blank
   * @throws IllegalArgumentException if the text is blank
   */
  public Unmet {
    Args.notBlank("what", what);
  }
}
