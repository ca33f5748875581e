package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.geometry.pattern.Panel;

/**
 * The lining: as many equal panels as the frame has sides, of a fabric of its own.
 *
 * @param panel one panel, good side in
 * @param count how many
 * @param clothArea area of cloth in all panels, in square metres
 * @param clothMass mass of all panels, in kilograms
 */
public record LiningPart(Panel panel, int count, double clothArea, double clothMass) {}
