/**
 * Cautions travel with the result they concern: what is at risk, the usual published limit, and
 * that local codes and licensed practice decide. The library never says that a structure is safe.
 *
 * <p>First class to open: {@link io.github.seamstead.shared.caution.Caution}.
 */
@NullMarked
package io.github.seamstead.shared.caution;

import org.jspecify.annotations.NullMarked;
