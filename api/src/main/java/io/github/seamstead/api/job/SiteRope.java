package io.github.seamstead.api.job;

import io.github.seamstead.assembly.fixings.Fibre;
import java.util.Optional;

/**
 * The rope that raises the cover.
 *
 * @param fibre what it is made of
 * @param diameter in metres
 * @param factor breaking load over working load
 * @param coil length of the coils it is cut from, in metres, if stated
 */
public record SiteRope(Fibre fibre, double diameter, double factor, Optional<Double> coil) {}
