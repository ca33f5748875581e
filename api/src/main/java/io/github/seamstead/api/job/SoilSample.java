package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * A local soil and the tests that were made of it.
 *
 * @param id its name, by which mixes and layers call it
 * @param note where it was dug, if stated
 * @param ribbon mean length of the ribbons before they break, in metres, if stated
 * @param jar the jar test, if stated
 * @param laboratory a laboratory's sheet, if stated
 * @param linearShrinkage linear shrinkage from a mould, as a part of one, if stated
 * @param moisture water over dry mass as it lies, as a part of one
 * @param bulking how much more room it takes as it lies than dry, as a part of one
 * @param stones share of the raw soil that is screened out, as a part of one
 * @param pricePerTonne price of a tonne, in the money of the site, as a part of one, if stated
 */
public record SoilSample(
    String id,
    Optional<String> note,
    Optional<Double> ribbon,
    Optional<JarReading> jar,
    Optional<LaboratorySheet> laboratory,
    Optional<Double> linearShrinkage,
    double moisture,
    double bulking,
    double stones,
    Optional<Double> pricePerTonne) {}
