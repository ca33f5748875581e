/**
 * What holds the cover down, and what lets water and smoke out: a screening, never a certificate.
 *
 * <pre>
 *   design speed -&gt; WindPressure -+
 *   ShelterForm  -&gt; WindCoefficients -&gt; WindScreen -&gt; PegCheck &lt;- PegTest
 *                                             -&gt; Ballast, HemRope, GuyRope
 *   floor area   -&gt; Ventilation          cap -&gt; CapDrainage
 * </pre>
 *
 * <p>SI units, radians. Every result carries its cautions. First class to open: {@link
 * io.github.seamstead.assembly.anchor.WindScreen}.
 */
@NullMarked
package io.github.seamstead.assembly.anchor;

import org.jspecify.annotations.NullMarked;
