package io.github.seamstead.geometry.pattern;

/**
 * One edge of a piece's stitch outline.
 *
 * @param letter the edge's letter, empty if it has none
 * @param joint the joint's name as given, empty if it has none
 * @param faceEdge the edge of the face that it is or is part of; −1 for an edge made by a splice
 *     and for pieces that are not cut from a face
 * @param allowance role and width of the cloth beyond the stitch line
 * @param finishedLength the length on the stitch line, in metres
 * @param fromBase along a hip, the distance from the face's base to the nearer end of this edge, in
 *     metres; 0 elsewhere
 */
public record PieceEdge(
    String letter,
    String joint,
    int faceEdge,
    EdgeAllowance allowance,
    double finishedLength,
    double fromBase) {}
