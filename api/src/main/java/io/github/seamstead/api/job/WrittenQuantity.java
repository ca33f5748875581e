package io.github.seamstead.api.job;

import io.github.seamstead.shared.check.Args;
import java.util.Optional;

/**
 * A measured quantity together with the text it was written as, in which a slip of the pen can be
 * traced.
 *
 * @param value the value in its SI unit; finite
 * @param standardUncertainty one standard deviation in the same unit, if the text states it; more
 *     than 0
 * @param text the text of the document
 */
public record WrittenQuantity(double value, Optional<Double> standardUncertainty, String text) {

  public WrittenQuantity {
    Args.finite("value", value, "");
    standardUncertainty.ifPresent(u -> Args.positive("standard uncertainty", u, ""));
  }
}
