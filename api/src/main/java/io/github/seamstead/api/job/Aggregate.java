package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * Sand or gravel that is bought or screened.
 *
 * @param id its name, by which mixes and layers call it
 * @param kind sand or gravel
 * @param smallest smallest grain of a gravel, in metres, if stated
 * @param largest largest grain, in metres, if stated
 * @param moisture water over dry mass as it lies, as a part of one
 * @param deliveryStep mass in which it is sold, in kilograms
 * @param clay share of clay in its dry mass, as a part of one, if stated
 * @param clayUncertainty standard uncertainty of that share, as a part of one
 * @param bulkingTin the sand in a tin, damp and flooded, if made
 * @param dried a sample dried to tell its moisture, if made
 * @param weighed a weighed bucket of it, if made
 * @param pricePerTonne price of a tonne, in the money of the site, if stated
 */
public record Aggregate(
    String id,
    AggregateKind kind,
    Optional<Double> smallest,
    Optional<Double> largest,
    double moisture,
    double deliveryStep,
    Optional<Double> clay,
    double clayUncertainty,
    Optional<BulkingTin> bulkingTin,
    Optional<DriedSample> dried,
    Optional<WeighedBucket> weighed,
    Optional<Double> pricePerTonne) {}
