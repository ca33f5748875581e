/**
 * Which doubtful input moves a result most: first-order and total indices of its variance, and the
 * law of propagation for one formula.
 *
 * <p>First class to open: {@link io.github.seamstead.shared.sensitivity.SensitivityDesign}.
 */
@NullMarked
package io.github.seamstead.shared.sensitivity;

import org.jspecify.annotations.NullMarked;
