/**
 * How to proportion soil, sand, gravel and fibre, and how to read trial mixes.
 *
 * <pre>
 *   MixComponent (what lies on site)  -&gt;  ClayBlend  -&gt;  Recipe (parts, bucket, mass)
 * </pre>
 *
 * <p>Amounts are shares of dry mass. Builders' recipes say "clay" and mean clay soil, give the
 * ratio in either direction, and mix volume with mass; here a ratio always names both sides and its
 * basis ({@link io.github.seamstead.materials.mix.Proportion}).
 *
 * <p>First class to open: {@link io.github.seamstead.materials.mix.ClayBlend}.
 */
@NullMarked
package io.github.seamstead.materials.mix;

import org.jspecify.annotations.NullMarked;
