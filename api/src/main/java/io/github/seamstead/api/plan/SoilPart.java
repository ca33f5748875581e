package io.github.seamstead.api.plan;

import io.github.seamstead.api.job.SoilSample;
import io.github.seamstead.materials.mix.MixComponent;
import io.github.seamstead.materials.soil.SoilFinding;

/**
 * One local soil.
 *
 * @param sample the soil as the document gives it
 * @param finding what its tests say
 * @param component the soil as a part of a mix
 */
public record SoilPart(SoilSample sample, SoilFinding finding, MixComponent component) {}
