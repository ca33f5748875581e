package io.github.seamstead.api.job;

import io.github.seamstead.assembly.anchor.Terrain;

/**
 * A basic wind speed of a code that prints means and not gusts.
 *
 * @param speed ten-minute mean at 10 m over open country, in metres per second
 * @param terrain what the country upwind looks like
 */
public record BasicWind(double speed, Terrain terrain) {}
