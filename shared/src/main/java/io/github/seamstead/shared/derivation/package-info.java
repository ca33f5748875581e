/**
 * Worked steps: the sum that the program did, as a page that a teacher can show.
 *
 * <p>A calculation has one body. It takes a {@link io.github.seamstead.shared.derivation.Steps} and
 * records while it computes; the plain call passes {@link
 * io.github.seamstead.shared.derivation.Steps#none()}, which does nothing and allocates nothing.
 * The worked call passes a {@link io.github.seamstead.shared.derivation.StepRecorder}:
 *
 * <pre>{@code
 * static double slant(double inradius, double height, Steps steps) {
 *   return steps
 *       .step("s", "slant height")
 *       .formula("sqrt(r^2 + H^2)")
 *       .with("r", inradius, "m")
 *       .with("H", height, "m")
 *       .from(Source.derived("plane geometry"))
 *       .gives(Math.sqrt(inradius * inradius + height * height), "m");
 * }
 * }</pre>
 *
 * <p>A formula is text in one small notation, defined by {@link
 * io.github.seamstead.shared.derivation.Formula}. Tests re-evaluate every recorded step with an
 * expression library that knows nothing of this one.
 *
 * <p>First class to open: {@link io.github.seamstead.shared.derivation.StepRecorder}.
 */
@NullMarked
package io.github.seamstead.shared.derivation;

import org.jspecify.annotations.NullMarked;
