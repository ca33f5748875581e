package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.assembly.anchor.Ballast;
import io.github.seamstead.assembly.anchor.CapDrainage;
import io.github.seamstead.assembly.anchor.GuyRope;
import io.github.seamstead.assembly.anchor.HemRope;
import io.github.seamstead.assembly.anchor.PeakWind;
import io.github.seamstead.assembly.anchor.PegCheck;
import io.github.seamstead.assembly.anchor.Ventilation;
import io.github.seamstead.assembly.anchor.WindScreen;
import java.util.Optional;

/**
 * Wind screening of the edge and the pegs. It screens; it never certifies.
 *
 * @param peak how the gust was raised from a mean; empty if the document states the gust
 * @param screen the wind on the whole and on each peg
 * @param ballast mass that would hold instead of pegs
 * @param ventilation the openings for air
 * @param pegs the pull beside what pegs held in the builder's test; empty if none was made
 * @param hemRope a rope along the hem from peg to peg
 * @param guy a guy rope from each corner at half a right angle, for a cover that is stayed so
 * @param drainage whether water runs off the top
 */
public record AnchoringPart(
    Optional<PeakWind> peak,
    WindScreen screen,
    Ballast ballast,
    Ventilation ventilation,
    Optional<PegCheck> pegs,
    HemRope hemRope,
    GuyRope guy,
    CapDrainage drainage) {}
