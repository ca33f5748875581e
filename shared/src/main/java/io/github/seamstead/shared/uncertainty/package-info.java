/**
 * Values with their doubt: a standard uncertainty that is carried through, and ranges for people.
 *
 * <p>Follows the law of propagation of uncertainty for independent inputs (JCGM 100:2008, clause
 * 5.1.2; from memory). First classes to open: {@link
 * io.github.seamstead.shared.uncertainty.Uncertain} for measurements, {@link
 * io.github.seamstead.shared.uncertainty.Range} for results a crew plans with.
 */
@NullMarked
package io.github.seamstead.shared.uncertainty;

import org.jspecify.annotations.NullMarked;
