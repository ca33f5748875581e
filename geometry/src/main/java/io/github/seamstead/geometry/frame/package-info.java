/**
 * The ideal frame: a regular right pyramid of 3 to 64 sides, whole or truncated at the top.
 *
 * <p>{@link io.github.seamstead.geometry.frame.FrameSolver} finds the pyramid from any two
 * independent measures; {@link io.github.seamstead.geometry.frame.RegularPyramid#measures()} gives
 * all others; {@link io.github.seamstead.geometry.frame.RegularPyramid#faceOutline()} is the face
 * that the cover is made from, once {@link io.github.seamstead.geometry.frame.FabricOffset} has
 * moved it outside the poles. {@link io.github.seamstead.geometry.members.FrameMembers} lists poles
 * and rings with their saw settings, and {@link io.github.seamstead.geometry.bars.BarCutting} cuts
 * them from bars.
 *
 * <p>Axes: the base lies in the plane z = 0 with its centre at the origin and z points up. Hip i (1
 * … n) stands at azimuth 2πi/n counter-clockwise from x as seen from above; face i lies between hip
 * i − 1 and hip i, so that hip i is the right edge of face i and the left edge of face i + 1 as
 * seen from outside.
 *
 * <p>First class to open: {@link io.github.seamstead.geometry.frame.FrameSolver}.
 */
@NullMarked
package io.github.seamstead.geometry.frame;

import org.jspecify.annotations.NullMarked;
