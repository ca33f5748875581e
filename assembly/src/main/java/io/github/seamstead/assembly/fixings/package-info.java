/**
 * What holds the cover: fixings, adhesive, tape, rope and pegs, counted for each joint and bought
 * in whole packs.
 *
 * <pre>
 *   joint lengths -&gt; FixingCount, AdhesiveNeed, Runs, HemPegs -&gt; ShoppingItem -&gt; ShoppingList
 *   seams, those made -&gt; SeamsLeft  what of it is left to do
 *   layers        -&gt; SeamStack        how long a leg, how much thread
 *   rope          -&gt; RopeStrength     two printed rules, the lower one used
 * </pre>
 *
 * <p>SI units. First class to open: {@link io.github.seamstead.assembly.fixings.FixingCount}.
 */
@NullMarked
package io.github.seamstead.assembly.fixings;

import org.jspecify.annotations.NullMarked;
