package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.assembly.anchor.Ballast;
import io.github.seamstead.assembly.anchor.CapDrainage;
import io.github.seamstead.assembly.anchor.Ventilation;
import io.github.seamstead.assembly.anchor.WindScreen;

/**
 * Wind screening of the edge and the pegs. It screens; it never certifies.
 *
 * @param screen the wind on the whole and on each peg
 * @param ballast mass that would hold instead of pegs
 * @param ventilation the openings for air
 * @param drainage whether water runs off the top
 */
public record AnchoringPart(
    WindScreen screen, Ballast ballast, Ventilation ventilation, CapDrainage drainage) {}
