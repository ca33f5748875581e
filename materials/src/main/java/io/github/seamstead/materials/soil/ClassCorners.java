package io.github.seamstead.materials.soil;

import java.util.ArrayList;
import java.util.List;

/** Corners of the class areas, as the lines of the class rules cut them. */
final class ClassCorners {

  private ClassCorners() {}

  static List<Texture> of(TextureClass textureClass) {
    return switch (textureClass) {
      case SAND -> corners(0, 100, 0, 85, 10, 90);
      case LOAMY_SAND -> corners(0, 85, 0, 70, 15, 85, 10, 90);
      case SANDY_LOAM -> corners(0, 70, 0, 50, 7, 43, 7, 52, 20, 52, 20, 80, 15, 85);
      case LOAM -> corners(7, 52, 7, 43, 27, 23, 27, 45, 20, 52);
      case SILT_LOAM -> corners(0, 50, 0, 20, 12, 8, 12, 0, 27, 0, 27, 23);
      case SILT -> corners(0, 20, 0, 0, 12, 0, 12, 8);
      case SANDY_CLAY_LOAM -> corners(20, 80, 20, 52, 27, 45, 35, 45, 35, 65);
      case CLAY_LOAM -> corners(27, 45, 27, 20, 40, 20, 40, 45);
      case SILTY_CLAY_LOAM -> corners(27, 20, 27, 0, 40, 0, 40, 20);
      case SANDY_CLAY -> corners(35, 65, 35, 45, 55, 45);
      case SILTY_CLAY -> corners(40, 20, 40, 0, 60, 0);
      case CLAY -> corners(40, 45, 40, 20, 60, 0, 100, 0, 55, 45);
    };
  }

  /** Pairs of clay and sand in per cent. */
  private static List<Texture> corners(double... clayAndSand) {
    List<Texture> list = new ArrayList<>();
    for (int i = 0; i < clayAndSand.length; i += 2) {
      double silt = 100 - clayAndSand[i] - clayAndSand[i + 1];
      list.add(Texture.ofPercent(clayAndSand[i], silt, clayAndSand[i + 1]));
    }
    return List.copyOf(list);
  }
}
