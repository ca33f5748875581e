package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.assembly.fixings.AdhesiveNeed;
import io.github.seamstead.assembly.fixings.FixingCount;
import io.github.seamstead.assembly.fixings.HemPegs;
import io.github.seamstead.assembly.fixings.ShoppingList;
import java.util.Optional;

/**
 * What holds seams and hem.
 *
 * @param fixings staples, stitches or screws of the seams
 * @param adhesive adhesive in the seams, if the document states a bead
 * @param pegs pegs round the hem
 * @param shopping all of it, rounded up to packs
 */
public record FixingsPart(
    FixingCount fixings, Optional<AdhesiveNeed> adhesive, HemPegs pegs, ShoppingList shopping) {}
