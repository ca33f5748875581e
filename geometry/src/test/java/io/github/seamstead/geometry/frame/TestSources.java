package io.github.seamstead.geometry.frame;

import io.github.seamstead.shared.source.Source;

/** The publications that these tests hold the frame against. */
final class TestSources {

  static final Source TOOLBOX_POLYGONS =
      Source.found("Engineering ToolBox", "Regular Polygons", "", "area over side squared");
  static final Source POLYGON_TABLE =
      Source.found("J. Masi", "Areas of regular polygons, table page", "", "n = 7 to 12");
  static final Source HEXAGON = Source.found("MatheAss", "Regular Polygons", "", "hexagon, R = 1");
  static final Source CRC_TABLE =
      Source.fromMemory("CRC", "Standard Mathematical Tables", "", "regular polygons");
  static final Source TETRAHEDRON =
      Source.found("Holbrook Peatchath", "Angle of wall of tetrahedron", "2022", "");
  static final Source JOHNSON =
      Source.fromMemory(
          "N. W. Johnson",
          "Convex polyhedra with regular faces, Canadian Journal of Mathematics 18",
          "1966",
          "J1, J2");
  static final Source J1 =
      Source.found("Encyclopaedia mirror", "Square pyramid, citing Johnson", "1966", "");
  static final Source J2 = Source.found("HandWiki", "Pentagonal pyramid", "", "");
  static final Source J8 = Source.found("Encyclopaedia mirror", "Elongated square pyramid", "", "");
  static final Source J9 = Source.found("Wikiwand", "Elongated pentagonal pyramid", "", "");
  static final Source CONE = Source.found("anvilfire", "Cone development", "", "point angle 90°");
  static final Source PAPYRUS =
      Source.found("Moscow Mathematical Papyrus", "Problem 14", "c. 1850 BC", "");
  static final Source REGRESSION =
      Source.derived(
          "right regular pyramid of side 1 by face slope, computed apart from the project");

  private TestSources() {}
}
