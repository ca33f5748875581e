package io.github.seamstead.geometry.survey;

import io.github.seamstead.shared.uncertainty.Uncertain;

/**
 * A panel edge as it stands.
 *
 * @param edge which edge
 * @param length its adjusted length, in metres
 */
public record EdgeLength(SurveyShape.PanelEdge edge, Uncertain length) {}
