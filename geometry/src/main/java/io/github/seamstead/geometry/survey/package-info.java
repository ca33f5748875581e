/**
 * The frame as it stands: taped distances, levels and plumb offsets become adjusted corners, each
 * with its uncertainty.
 *
 * <p>The readings form a free network in space. They are adjusted by least squares, {@code v'Pv =
 * min} with {@code P = diag(1/u^2)}, by Gauss-Newton steps on the normal equations. What distances
 * cannot fix (place and turn of the whole) is fixed by inner constraints: of all equal solutions,
 * the one nearest to the ideal frame. Levels and plumb offsets take tilt out of that freedom by
 * themselves. A point fixed by distances alone has a mirror twin; by convention corners are
 * numbered counter-clockwise seen from above and the top stands above the base.
 *
 * <p>First class to open: {@link io.github.seamstead.geometry.survey.Survey}. Its {@code adjust()}
 * gives an {@link io.github.seamstead.geometry.survey.Adjustment} with a test of every reading, or
 * a {@link io.github.seamstead.geometry.survey.Deficiency} that names the readings still to take;
 * {@code findBlunders()} takes out what cannot be right and says what probably happened. {@link
 * io.github.seamstead.geometry.templates.AsBuilt} then gives faces, templates and what the hem and
 * the seams must take up.
 *
 * <p>Readings are taken as independent. What all readings of one tape share, such as its own wrong
 * length, shows in no residual: it makes the whole frame larger or smaller. Correct for it ({@link
 * io.github.seamstead.geometry.tape.TapeCorrections}), or compare the tape with another one.
 *
 * <p>The adjustment is a screening of measurements. It says nothing of the strength of a frame.
 */
@NullMarked
package io.github.seamstead.geometry.survey;

import org.jspecify.annotations.NullMarked;
