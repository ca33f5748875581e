package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * What a fixing of a seam goes through.
 *
 * @param layers layers of cloth
 * @param extra tape, washers or a batten in the way, in metres
 * @param beyond what turns over or bites on the far side, in metres, if stated
 * @param reel thread on a reel, in metres, if stated
 */
public record SeamLayers(
    int layers, double extra, Optional<Double> beyond, Optional<Double> reel) {}
