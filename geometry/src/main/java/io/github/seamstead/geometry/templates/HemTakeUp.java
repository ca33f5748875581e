package io.github.seamstead.geometry.templates;

import io.github.seamstead.geometry.survey.Node;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.Optional;

/**
 * What the hem takes up at a base corner. The cover hangs from its top, so whatever a hip edge has
 * to spare, and with it the corners' differences in height, ends at the hem.
 *
 * @param corner the base corner
 * @param aboveLowest its height above the lowest corner, in metres; empty if nothing was levelled
 * @param takeUp length along the hip to be turned up at this corner: the longer of the two panel
 *     edges less the hip, in metres; negative if the hem must be let down by that much
 */
public record HemTakeUp(Node corner, Optional<Uncertain> aboveLowest, Uncertain takeUp) {}
