package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.assembly.fixings.AdhesiveNeed;
import io.github.seamstead.assembly.fixings.FixingCount;
import io.github.seamstead.assembly.fixings.HemPegs;
import io.github.seamstead.assembly.fixings.SeamBill;
import io.github.seamstead.assembly.fixings.ShoppingList;
import io.github.seamstead.assembly.schedule.AdhesiveTimes;
import java.util.Optional;

/**
 * What holds seams and hem.
 *
 * @param fixings staples, stitches or screws of the seams
 * @param seams every seam that they hold
 * @param adhesive adhesive in the seams, if the document states a bead
 * @param glue open and cure time by the adhesive's maker, if the document states them
 * @param pegs pegs round the hem
 * @param through what a fixing of a seam goes through
 * @param left what of it is used up and what the rest takes
 * @param shopping what the rest takes, rounded up to packs
 */
public record FixingsPart(
    FixingCount fixings,
    SeamBill seams,
    Optional<AdhesiveNeed> adhesive,
    Optional<AdhesiveTimes> glue,
    HemPegs pegs,
    StackPart through,
    FixingsLeft left,
    ShoppingList shopping) {}
