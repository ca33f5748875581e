package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.materials.drying.DryingForecast;

/**
 * What the water of a drying layer does to the air under the cover.
 *
 * @param waterFirstDay that the layer gives in its first day, in kg
 * @param roomVolume of the air under the cover, in m³
 * @param leastChanges air changes a day that carry it off if the air leaves saturated
 * @param changesToHold air changes a day that keep the air within ten points of the humidity stated
 * @param shutChanges air changes a day of a cover that is shut
 * @param shutHumidity humidity over the wet layer under a cover that is shut, as a part of one
 * @param shut the forecast under a cover that is shut
 */
public record CoverAir(
    double waterFirstDay,
    double roomVolume,
    double leastChanges,
    double changesToHold,
    double shutChanges,
    double shutHumidity,
    DryingForecast shut) {}
