/**
 * The poles and rings of a frame: cut lengths, compound cuts with their saw settings at every
 * joint, and how far a section reaches beyond its centre line.
 *
 * <p>First class to open: {@link io.github.seamstead.geometry.members.FrameMembers}, which lists
 * them all for a pyramid and a {@link io.github.seamstead.geometry.members.MemberSpec}; its pieces
 * go to {@link io.github.seamstead.geometry.bars.BarCutting}.
 *
 * <p>Lengths and angles only: nothing here says that a pole is strong enough.
 */
@NullMarked
package io.github.seamstead.geometry.members;

import org.jspecify.annotations.NullMarked;
