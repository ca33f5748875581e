/**
 * Lifting, turning and raising the cover by hand: what it weighs, how it passes an opening, how
 * hard a rope is to pull, how many people it takes and in what wind it stays on the ground.
 *
 * <pre>
 *   area, cloth  -&gt; Bundle -&gt; Turning            which end goes through which
 *   posture      -&gt; LiftTask -&gt; LiftLimit -&gt; LiftTeam
 *   mass, slope  -&gt; RopePull, Tackle -&gt; DropZone
 *   loose cloth  -&gt; RaisingWind
 * </pre>
 *
 * <p>SI units, radians. Every result carries its cautions. First class to open: {@link
 * io.github.seamstead.assembly.handling.LiftLimit}.
 */
@NullMarked
package io.github.seamstead.assembly.handling;

import org.jspecify.annotations.NullMarked;
