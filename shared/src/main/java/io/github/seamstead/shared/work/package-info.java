/**
 * Long work: a budget, progress, cancellation and seeded randomness.
 *
 * <p>A search takes a {@link io.github.seamstead.shared.work.Work}: it stops at the budget or when
 * cancelled and returns the best so far. The result depends on the seed and the work budget alone,
 * never on the machine's speed or cores, unless the caller sets a time budget.
 *
 * <p>First class to open: {@link io.github.seamstead.shared.work.Work}.
 */
@NullMarked
package io.github.seamstead.shared.work;

import org.jspecify.annotations.NullMarked;
