package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.quantity.QuantityFormatException;
import io.github.seamstead.shared.quantity.QuantityText;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The kinds of value that are quantities: text with a unit, or a bare number in a stated unit. */
final class Quantities {

  /** Guards the limits against the last digit of a unit conversion. */
  private static final double LIMIT_SLACK = 1e-9;

  private Quantities() {}

  /**
   * A quantity within limits.
   *
   * @param dimension its dimension
   * @param unit the unit of a bare number and of the limits
   * @param least the least value allowed, in {@code unit}
   * @param greatest the greatest value allowed, in {@code unit}
   */
  static Kind<Double> of(Dimension dimension, String unit, double least, double greatest) {
    return new Plain(new Scale(dimension, unit, least, greatest));
  }

  /** A length within limits given in {@code unit}. */
  static Kind<Double> length(String unit, double least, double greatest) {
    return of(Dimension.LENGTH, unit, least, greatest);
  }

  /** The kind of one of the frame's measures, with limits that no shelter passes. */
  static Kind<Double> measure(FrameMeasure measure) {
    return switch (measure.dimension()) {
      case LENGTH -> of(Dimension.LENGTH, "m", 0.001, 1000);
      case AREA -> of(Dimension.AREA, "m2", 1e-6, 1e6);
      case VOLUME -> of(Dimension.VOLUME, "m3", 1e-9, 1e7);
      default -> of(Dimension.ANGLE, "deg", 0.1, 179.9);
    };
  }

  /** A ratio written as a number from 0 to 1 or in per cent. */
  static Kind<Double> ratio(double least, double greatest) {
    return of(Dimension.RATIO, "1", least, greatest);
  }

  /** A reading: it may carry its standard uncertainty, and its text is kept. */
  static Kind<WrittenQuantity> written(
      Dimension dimension, String unit, double least, double greatest) {
    return new Written(new Scale(dimension, unit, least, greatest));
  }

  private record Plain(Scale scale) implements Kind<Double> {

    @Override
    public @Nullable Double read(Json value, String path, Walk walk) {
      Uncertain read = scale.read(value, path, walk, false);
      return read == null ? null : read.value();
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> definitions) {
      return scale.schema(false);
    }
  }

  private record Written(Scale scale) implements Kind<WrittenQuantity> {

    @Override
    public @Nullable WrittenQuantity read(Json value, String path, Walk walk) {
      Uncertain read = scale.read(value, path, walk, true);
      if (read == null) {
        return null;
      }
      Optional<Double> doubt = Optional.of(read.standardUncertainty()).filter(u -> u > 0);
      String text = value instanceof Json.Text t ? t.text() : value.quoted() + " " + scale.unit;
      return new WrittenQuantity(read.value(), doubt, text);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> definitions) {
      return scale.schema(true);
    }
  }

  /** A unit with limits in that unit. */
  private record Scale(Dimension dimension, String unit, double least, double greatest) {

    @Nullable Uncertain read(Json value, String path, Walk walk, boolean doubted) {
      double si;
      double doubt = 0;
      if (value instanceof Json.Num n) {
        if (!Double.isFinite(n.value())) {
          walk.fault(path, value, allowed());
          return null;
        }
        si = toSi(n.value());
      } else if (value instanceof Json.Text t) {
        try {
          Uncertain read =
              doubted
                  ? QuantityText.parseUncertain(t.text(), dimension)
                  : Uncertain.exact(QuantityText.parse(t.text(), dimension));
          si = read.value();
          doubt = read.standardUncertainty();
        } catch (QuantityFormatException e) {
          String why =
              String.valueOf(e.getMessage()).replaceFirst("(?s)^.*?\" for an? [a-z ]+: ", "");
          walk.fault(path, value, why);
          return null;
        }
      } else {
        walk.fault(
            path,
            value,
            "must be a text such as \"" + example() + "\", or a bare number in " + unitName());
        return null;
      }
      double low = toSi(least);
      double high = toSi(greatest);
      if (si < low - LIMIT_SLACK * Math.abs(low) || si > high + LIMIT_SLACK * Math.abs(high)) {
        walk.fault(path, value, allowed());
        return null;
      }
      return new Uncertain(si, doubt);
    }

    private double toSi(double number) {
      return unit.equals(dimension.siSymbol())
          ? number
          : QuantityText.parse(Numbers.plain(number) + " " + unit, dimension);
    }

    private String allowed() {
      return "must be from " + shown(least) + " to " + shown(greatest);
    }

    private String shown(double number) {
      return unit.equals("1") ? Numbers.plain(number) : Numbers.plain(number) + " " + unit;
    }

    private String example() {
      return shown(Math.max(least, Math.min(greatest, 1)));
    }

    private String unitName() {
      return unit.equals("1") ? "parts of one" : unit;
    }

    Map<String, Object> schema(boolean doubted) {
      Map<String, Object> schema = new LinkedHashMap<>();
      schema.put("type", List.of("number", "string"));
      schema.put("minimum", least);
      schema.put("maximum", greatest);
      schema.put("maxLength", 100);
      schema.put("pattern", "[0-9½¼¾⅓⅔⅛⅜⅝⅞]");
      schema.put(
          "$comment",
          "a "
              + dimension.label()
              + ": a number and one of "
              + String.join(", ", QuantityText.symbols(dimension))
              + (doubted ? "; ± and a standard uncertainty may follow" : "")
              + "; a bare number is in "
              + unitName());
      return schema;
    }
  }
}
