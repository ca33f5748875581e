package io.github.seamstead.assembly.ring;

import java.util.Optional;

/**
 * A piece on the map, with what the reader sees on its left and right hand.
 *
 * @param place the place on the map from the reader's left, from 1
 * @param piece the piece's number, from 1
 * @param name what is written on it
 * @param onLeft the edge on the reader's left
 * @param leftJoint the joint there; empty for a free edge
 * @param onRight the edge on the reader's right
 * @param rightJoint the joint there; empty for a free edge
 * @param angle direction of the piece's middle in a plan seen from above, in radians,
 *     counter-clockwise from the first place's start; turns the other way as the cover lies
 */
public record PlacedPiece(
    int place,
    int piece,
    String name,
    Edge onLeft,
    Optional<Joint> leftJoint,
    Edge onRight,
    Optional<Joint> rightJoint,
    double angle) {}
