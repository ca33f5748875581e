/**
 * The floor: from the plan of the frame to layers, batches, sectors, orders and trips.
 *
 * <p>The work runs {@link io.github.seamstead.materials.floor.Footprint} (what is covered) → {@link
 * io.github.seamstead.materials.floor.BuildUp} (layers bottom to top and what each takes) → {@link
 * io.github.seamstead.materials.floor.BatchPlan} (mixer loads in whole and part buckets, water) →
 * {@link io.github.seamstead.materials.floor.SectorPlan} (which batch goes where, in an order in
 * which nobody is trapped) → {@link io.github.seamstead.materials.floor.OrderList} (what to order
 * and how many trailer trips it is).
 *
 * <p>Conventions: lengths in metres, masses in kilograms, volumes in cubic metres; moisture is
 * water over dry mass; the compacted density is dry mass over compacted volume, the loose density
 * is dry mass over the volume of the loose material as it lies in the bucket, so that the bulking
 * of damp sand is in the number.
 *
 * <p>First class to open: {@link io.github.seamstead.materials.floor.BuildUp}.
 */
@NullMarked
package io.github.seamstead.materials.floor;

import org.jspecify.annotations.NullMarked;
