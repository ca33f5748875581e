package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.job.MixSpec;
import io.github.seamstead.materials.floor.FloorMix;
import io.github.seamstead.materials.mix.ClayBlend;

/**
 * One mix of a soil with sand.
 *
 * @param spec the mix as the document gives it
 * @param blend its proportions
 * @param floorMix the mix as layers use it
 */
public record MixPart(MixSpec spec, ClayBlend blend, FloorMix floorMix) {}
