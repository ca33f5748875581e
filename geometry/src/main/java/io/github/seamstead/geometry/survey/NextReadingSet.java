package io.github.seamstead.geometry.survey;

import java.util.List;

/**
 * Readings worth taking together.
 *
 * @param pairs between which nodes, the one that helps more alone first
 * @param assumedUncertainty the standard uncertainty taken for each, in metres
 * @param worstEdge the least certain panel edge today
 * @param worstBefore its standard uncertainty today, in metres
 * @param worstAfter the standard uncertainty of whichever panel edge is the least certain once all
 *     are taken, in metres
 */
public record NextReadingSet(
    List<SurveyShape.PanelEdge> pairs,
    double assumedUncertainty,
    SurveyShape.PanelEdge worstEdge,
    double worstBefore,
    double worstAfter) {

  public NextReadingSet {
    pairs = List.copyOf(pairs);
  }
}
