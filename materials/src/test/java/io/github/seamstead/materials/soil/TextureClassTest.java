package io.github.seamstead.materials.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextureClassTest {

  private static final Source LOOKUP =
      Source.found(
          "US National Cooperative Soil Survey", "look-up table soiltexture", "", "5151 rows");
  private static final Source CENTROIDS =
      Source.found("Levi", "Modified Centroid, Soil Sci. Soc. Am. J. 81", "2017", "averages");

  @ParameterizedTest
  @CsvSource({
    "S,85",
    "LS,155",
    "SL,565",
    "L,349",
    "SiL,840",
    "Si,186",
    "SCL,392",
    "CL,325",
    "SiCL,273",
    "SC,210",
    "SiC,231",
    "C,1540"
  })
  void countsOfAllWholePercentPointsAgree(String symbol, int count) {
    OutsideCheck.of("materials.soil", "whole per cent points in class " + symbol, LOOKUP)
        .expect(count)
        .within(0)
        .got(counts().getOrDefault(symbol, 0));
  }

  @ParameterizedTest
  @CsvSource({
    "92,5,3,S", "82,12,6,LS", "65,25,10,SL", "42,40,18,L", "22,65,13,SiL", "8,87,5,Si",
    "61,12,27,SCL", "33,34,33,CL", "10,57,33,SiCL", "52,7,41,SC", "7,46,47,SiC", "20,25,55,C"
  })
  void centroidsFallInTheirClass(double sand, double silt, double clay, String symbol) {
    TextureClass found = Texture.ofPercent(clay, silt, sand).usdaClass();
    OutsideCheck.of("materials.soil", "class of the centroid of " + symbol, CENTROIDS)
        .expect(1)
        .within(0)
        .got(found.symbol().equals(symbol) ? 1 : 0);
  }

  @ParameterizedTest
  @CsvSource({
    "86,13,1,S",
    "85,15,0,LS",
    "90,0,10,LS",
    "70,30,0,SL",
    "85,0,15,SL",
    "52,41,7,L",
    "53,40,7,SL",
    "43,50,7,SiL",
    "50,50,0,SiL",
    "52,28,20,L",
    "53,27,20,SCL",
    "45,28,27,CL",
    "46,27,27,SCL",
    "20,53,27,SiCL",
    "20,80,0,Si",
    "8,80,12,SiL",
    "20,40,40,SiC",
    "45,15,40,C",
    "65,0,35,SC",
    "80,0,20,SCL",
    "45,0,55,C"
  })
  void pointsOnALineBelongToOneClass(double sand, double silt, double clay, String symbol) {
    OutsideCheck.of(
            "materials.soil",
            "class at sand " + sand + ", silt " + silt + ", clay " + clay + " is " + symbol,
            TextureClass.SOURCE)
        .expect(1)
        .within(0)
        .got(Texture.ofPercent(clay, silt, sand).usdaClass().symbol().equals(symbol) ? 1 : 0);
  }

  @Test
  void loamySandUsesTwiceTheClayAsAMisprintDoesNot() {
    // A misprint in circulation has silt + 1.5 clay < 30, which would make this loamy sand.
    assertThat(Texture.ofPercent(1, 28, 71).usdaClass()).isEqualTo(TextureClass.SANDY_LOAM);
  }

  @Test
  void areasOfTheDrawnClassesCoverTheTriangleOnce() {
    Map<TextureClass, Double> cells = new EnumMap<>(TextureClass.class);
    TextureGrid grid = new TextureGrid(200);
    for (int i = 0; i < grid.size(); i++) {
      cells.merge(
          TextureClass.of(grid.clay(i), grid.silt(i), grid.sand(i)),
          1.0 / grid.size(),
          Double::sum);
    }
    double sum = 0;
    for (TextureClass c : TextureClass.values()) {
      double area = area(c);
      sum += area;
      assertThat(area).as(c.label()).isCloseTo(cells.get(c), within(1e-3));
    }
    assertThat(sum).isCloseTo(1, within(1e-12));
  }

  private static double area(TextureClass c) {
    double twice = 0;
    for (int i = 0; i < c.corners().size(); i++) {
      Texture a = c.corners().get(i);
      Texture b = c.corners().get((i + 1) % c.corners().size());
      twice += a.clayRatio() * b.sandRatio() - b.clayRatio() * a.sandRatio();
    }
    return Math.abs(twice);
  }

  private static Map<String, Integer> counts() {
    Map<String, Integer> counts = new java.util.HashMap<>();
    for (int clay = 0; clay <= 100; clay++) {
      for (int silt = 0; silt <= 100 - clay; silt++) {
        TextureClass c = Texture.ofPercent(clay, silt, 100 - clay - silt).usdaClass();
        counts.merge(c.symbol(), 1, Integer::sum);
      }
    }
    return counts;
  }
}
