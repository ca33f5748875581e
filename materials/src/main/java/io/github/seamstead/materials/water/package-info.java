/**
 * Water in earth, and how densely it packs.
 *
 * <p>{@link io.github.seamstead.materials.water.PhaseRelations} solves the three phases from any
 * sufficient set of measures; {@link io.github.seamstead.materials.water.Moisture} keeps the wet
 * and the dry basis apart and says what water to add; {@link
 * io.github.seamstead.materials.water.ProctorCurve} reads a compaction test, and {@link
 * io.github.seamstead.materials.water.CompactionControl} holds a rammed pack against it.
 *
 * <p>Densities in kg/m³, moisture as water over dry mass unless a name says otherwise.
 *
 * <p>First class to open: {@link io.github.seamstead.materials.water.PhaseRelations}.
 */
@NullMarked
package io.github.seamstead.materials.water;

import org.jspecify.annotations.NullMarked;
