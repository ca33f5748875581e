/**
 * In which order to join: the merge tree that costs least of what the crew cares about.
 *
 * <pre>
 *   PieceRing, PlanOptions -&gt; JoinPlanner -&gt; MergePlan -&gt; TreeLayout
 *                                         -&gt; Comparison  pairs first, one by one, best
 * </pre>
 *
 * <p>A plan is a binary tree: leaves are pieces, nodes are groups, each merge is one joint. A ring
 * of n pieces has n - 1 merges and one closing joint, which joins the cover to itself with the
 * whole of it in hand. First class to open: {@link io.github.seamstead.assembly.merge.JoinPlanner}.
 */
@NullMarked
package io.github.seamstead.assembly.merge;

import org.jspecify.annotations.NullMarked;
