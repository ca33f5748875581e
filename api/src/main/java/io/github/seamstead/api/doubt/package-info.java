/**
 * What matters most: which doubtful input moves the numbers that people decide by.
 *
 * <p>First class to open: {@link io.github.seamstead.api.doubt.Matters}.
 */
@NullMarked
package io.github.seamstead.api.doubt;

import org.jspecify.annotations.NullMarked;
