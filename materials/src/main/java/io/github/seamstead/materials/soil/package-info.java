/**
 * What the soil is: from whatever tests were managed to an estimate with its doubt.
 *
 * <pre>
 *   SoilEvidence (one record per test)  -&gt;  SoilAssessment.assess  -&gt;  SoilFinding
 * </pre>
 *
 * <p>First class to open: {@link io.github.seamstead.materials.soil.SoilAssessment}. Fractions are
 * shares of the dry mass below 2 mm, from 0 to 1, with the limits of the USDA (clay below 0.002 mm,
 * silt to 0.05 mm, sand to 2 mm) unless a name says otherwise.
 */
@NullMarked
package io.github.seamstead.materials.soil;

import org.jspecify.annotations.NullMarked;
