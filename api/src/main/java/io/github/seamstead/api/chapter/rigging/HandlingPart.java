package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.assembly.handling.Bundle;
import io.github.seamstead.assembly.handling.DropZone;
import io.github.seamstead.assembly.handling.LiftTeam;
import io.github.seamstead.assembly.handling.RaisingWind;
import io.github.seamstead.assembly.handling.RopePull;
import io.github.seamstead.assembly.handling.Turning;

/**
 * Lifting, turning and raising the whole cover.
 *
 * @param bundle the cover as a bundle
 * @param turning which end goes through which opening
 * @param lift who may lift the bundle
 * @param pull the ropes over the top
 * @param zone where nobody stands
 * @param wind the wind above which the cover stays down
 */
public record HandlingPart(
    Bundle bundle,
    Turning turning,
    LiftTeam lift,
    RopePull pull,
    DropZone zone,
    RaisingWind wind) {}
