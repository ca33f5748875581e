package io.github.seamstead.materials.floor;

/**
 * One part of a batch.
 *
 * @param part the material
 * @param buckets buckets to tip in, a multiple of the crew's step
 * @param dryMass in kg
 * @param moistMass as carried, in kg
 * @param looseVolume in m³
 * @param bucketMass mass of one full bucket without the bucket, in kg
 */
public record BatchPart(
    MixPart part,
    double buckets,
    double dryMass,
    double moistMass,
    double looseVolume,
    double bucketMass) {

  static BatchPart of(MixPart part, double buckets, double bucketVolume) {
    double volume = buckets * bucketVolume;
    double dry = volume * part.looseDryDensity();
    return new BatchPart(
        part,
        buckets,
        dry,
        dry * (1 + part.moisture()),
        volume,
        bucketVolume * part.looseMoistDensity());
  }
}
