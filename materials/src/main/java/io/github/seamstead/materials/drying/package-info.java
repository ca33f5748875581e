/**
 * Drying, shrinkage, cracks and repair of wet earth coats.
 *
 * <p>While the surface is wet, the air decides ({@link
 * io.github.seamstead.materials.drying.Evaporation}, from {@link
 * io.github.seamstead.materials.drying.Psychrometrics}); after that, diffusion in the earth
 * decides. {@link io.github.seamstead.materials.drying.DryingForecast} runs both in one model for
 * {@link io.github.seamstead.materials.drying.Weather} and gives the days to firm, walkable and dry
 * to coat, with a range, since published diffusivities scatter tenfold and evaporation formulas by
 * ± 40 %. {@link io.github.seamstead.materials.drying.TileCalibration} narrows the range by
 * weighings of a test tile. {@link io.github.seamstead.materials.drying.Cracking} turns linear
 * shrinkage into crack width and slip volume.
 *
 * <p>Moisture is water over dry mass; times are in seconds from the laying of the coat, results for
 * people in days.
 *
 * <p>First class to open: {@link io.github.seamstead.materials.drying.DryingForecast}.
 */
@NullMarked
package io.github.seamstead.materials.drying;

import org.jspecify.annotations.NullMarked;
