package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.materials.water.CompactionControl;

/**
 * How dense a pack is rammed, against its compaction test.
 *
 * @param layer the layer's name
 * @param control the test and the places measured
 */
public record PackControl(String layer, CompactionControl control) {}
