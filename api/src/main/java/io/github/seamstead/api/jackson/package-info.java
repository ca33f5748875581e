/**
 * Jobs and results in an {@code ObjectMapper}. This package alone needs {@code jackson-databind},
 * which the library does not bring: whoever binds data declares it.
 *
 * <p>First class to open: {@link io.github.seamstead.api.jackson.SeamsteadModule}.
 */
@NullMarked
package io.github.seamstead.api.jackson;

import org.jspecify.annotations.NullMarked;
