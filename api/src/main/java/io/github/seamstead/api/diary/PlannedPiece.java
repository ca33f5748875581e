package io.github.seamstead.api.diary;

import io.github.seamstead.shared.plane.Outline;

/**
 * A piece where the plan before laid it.
 *
 * @param cut its outline with allowances as that plan drew it, in metres
 * @param place where it was to be cut
 */
public record PlannedPiece(Outline cut, Place place) {}
