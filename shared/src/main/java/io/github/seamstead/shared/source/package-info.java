/**
 * Where a number comes from: publications, common practice, and how each was seen.
 *
 * <p>Each module keeps its sources as constants beside the calculations that use them. First class
 * to open: {@link io.github.seamstead.shared.source.Source}.
 */
@NullMarked
package io.github.seamstead.shared.source;

import org.jspecify.annotations.NullMarked;
