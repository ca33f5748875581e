package io.github.seamstead.geometry.survey;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A node as adjusted. Axes: origin and directions are those of the ideal frame, which lies as near
 * as it can (inner constraints); z is up. Because of that, the coordinates' uncertainties depend on
 * that choice; those of distances do not.
 *
 * @param node the node
 * @param position its place, in metres
 * @param standardUncertainty along x, y and z, in metres
 */
public record AdjustedNode(Node node, Vector3D position, Vector3D standardUncertainty) {}
