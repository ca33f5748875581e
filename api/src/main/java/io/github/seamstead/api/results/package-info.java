/**
 * The plan as data: {@code results.json} and its schema.
 *
 * <p>Every number is in SI and its key ends in the unit: {@code hipEdge_m}, {@code mass_kg}, {@code
 * faceSlope_rad}. A key whose value does not exist in a plan is left out. The writer and the schema
 * come from one table for each part of the plan, so that they cannot drift.
 *
 * <p>First class to open: {@link io.github.seamstead.api.results.ResultsJson}.
 */
@NullMarked
package io.github.seamstead.api.results;

import org.jspecify.annotations.NullMarked;
