package io.github.seamstead.api.diary;

import io.github.seamstead.geometry.pattern.PatternPiece;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A piece that is cut.
 *
 * @param name its name
 * @param date the day on which it was cut
 * @param drawn the piece as it was drawn then
 * @param face the face whose panel it is part of; empty for a piece beside the panels
 * @param place where it was cut; empty if the job states no stock
 */
public record CutPiece(
    String name,
    LocalDate date,
    PatternPiece drawn,
    Optional<Integer> face,
    Optional<Place> place) {}
