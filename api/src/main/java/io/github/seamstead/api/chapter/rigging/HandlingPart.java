package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.assembly.handling.Bundle;
import io.github.seamstead.assembly.handling.DropZone;
import io.github.seamstead.assembly.handling.LiftTeam;
import io.github.seamstead.assembly.handling.RaisingWind;
import io.github.seamstead.assembly.handling.RopePull;
import io.github.seamstead.assembly.handling.Tackle;
import io.github.seamstead.assembly.handling.Turning;
import java.util.Optional;

/**
 * Lifting, turning and raising the whole cover.
 *
 * @param bundle the cover as a bundle
 * @param turning which end goes through which opening
 * @param lift who may lift the bundle
 * @param pull the ropes over the top
 * @param hold pull that holds the cover over the smoothest edge, all ropes together
 * @param tackle the tackle on each rope, if the crew cannot raise the cover without
 * @param rope the rope that the document states against that pull, if it states one
 * @param zone where nobody stands
 * @param wind the wind above which the cover stays down
 */
public record HandlingPart(
    Bundle bundle,
    Turning turning,
    LiftTeam lift,
    RopePull pull,
    double hold,
    Optional<Tackle> tackle,
    Optional<RopePart> rope,
    DropZone zone,
    RaisingWind wind) {}
