package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.uncertainty.Uncertain;

/**
 * A reading worth taking next.
 *
 * @param pair between which nodes
 * @param repeats true if that distance was read before
 * @param predicted what the tape should show, from the present readings, in metres
 * @param assumedUncertainty the standard uncertainty taken for the new reading, in metres
 * @param worstEdge the least certain panel edge today
 * @param worstBefore its standard uncertainty today, in metres
 * @param edgeAfter the standard uncertainty that this edge will have, in metres
 * @param worstAfter the standard uncertainty of whichever edge is then the least certain, in
 *     metres; on a regular frame other edges are as uncertain as the first, and one reading cannot
 *     help them all
 */
public record NextReading(
    SurveyShape.PanelEdge pair,
    boolean repeats,
    Uncertain predicted,
    double assumedUncertainty,
    SurveyShape.PanelEdge worstEdge,
    double worstBefore,
    double edgeAfter,
    double worstAfter) {}
