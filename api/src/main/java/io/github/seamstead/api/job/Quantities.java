package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.quantity.QuantityFormatException;
import io.github.seamstead.shared.quantity.QuantityText;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The kinds of value that are quantities: text with a unit, or a bare number in a stated unit. */
final class Quantities {

  /** Guards the limits against the last digit of a unit conversion. */
  private static final double LIMIT_SLACK = 1e-9;

  private static final double EXAMPLE_MILLIMETRES = 40;

  /** The shortest length that anyone writes in centimetres or millimetres for one in metres. */
  private static final double LEAST_MEANT = 0.05;

  /** More than any tape or scale gives, fewer than the noise of a conversion touches. */
  private static final int WRITTEN_DIGITS = 12;

  /** A tenth of a millimetre in ten metres. */
  private static final int ECHOED_DIGITS = 6;

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

  /**
   * The kind of one of the frame's measures, with limits that no shelter of poles and cloth passes.
   * A bare number beyond them is most often one in centimetres or millimetres.
   */
  static Kind<Double> measure(FrameMeasure measure) {
    return switch (measure) {
      case BASE_SIDE, CIRCUMRADIUS, INRADIUS -> length("m", 0.001, 25);
      case HEIGHT -> length("m", 0.001, 20);
      case HIP_EDGE, SLANT_HEIGHT -> length("m", 0.001, 35);
      case ACROSS_FLATS, ACROSS_CORNERS -> length("m", 0.001, 50);
      case PERIMETER -> length("m", 0.003, 160);
      case BASE_AREA -> of(Dimension.AREA, "m2", 1e-6, 2000);
      case COVER_AREA -> of(Dimension.AREA, "m2", 1e-6, 3000);
      case VOLUME -> of(Dimension.VOLUME, "m3", 1e-9, 13000);
      case FACE_SLOPE, HIP_SLOPE, APEX_ANGLE -> of(Dimension.ANGLE, "deg", 0.1, 179.9);
    };
  }

  /** A price: a plain number in whatever money the site uses. */
  static Kind<Double> money() {
    return of(Dimension.MONEY, "1", 0, 1e6);
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
    public Json write(Object value, String path, Set<String> assumed) {
      return scale.write((Double) value);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> definitions) {
      return scale.schema(false);
    }

    @Override
    public Optional<Map<String, Object>> quantity() {
      return Optional.of(scale.described());
    }

    @Override
    public Optional<Limits> limits() {
      return Optional.of(new Limits(scale.toSi(scale.least), scale.toSi(scale.greatest)));
    }

    @Override
    public double apart(String text) {
      return scale.apart(text);
    }

    @Override
    public Optional<String> echo(Json value) {
      return scale.echo(value, false);
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
    public Json write(Object value, String path, Set<String> assumed) {
      return scale.write((WrittenQuantity) value);
    }

    @Override
    public Map<String, Object> schema(Map<String, Object> definitions) {
      return scale.schema(true);
    }

    @Override
    public Optional<Map<String, Object>> quantity() {
      return Optional.of(scale.described());
    }

    @Override
    public Optional<String> echo(Json value) {
      return scale.echo(value, true);
    }
  }

  /** A unit with limits in that unit. */
  private record Scale(Dimension dimension, String unit, double least, double greatest) {

    @Nullable Uncertain read(Json value, String path, Walk walk, boolean doubted) {
      Uncertain read = null;
      if (value instanceof Json.Num n && isBareRead(n.value())) {
        double si = toSi(n.value());
        if (Double.isFinite(si)) {
          read = Uncertain.exact(si);
        } else {
          walk.fault(path, value, allowed());
        }
      } else if (value instanceof Json.Text t) {
        read = text(t, path, walk, doubted);
      } else {
        walk.fault(path, value, form());
      }
      if (read == null) {
        return null;
      }
      double low = toSi(least);
      double high = toSi(greatest);
      double si = read.value();
      if (si < low - LIMIT_SLACK * Math.abs(low) || si > high + LIMIT_SLACK * Math.abs(high)) {
        walk.fault(path, value, allowed(value) + meant(value));
        return null;
      }
      return read;
    }

    private @Nullable Uncertain text(Json.Text value, String path, Walk walk, boolean doubted) {
      try {
        return doubted
            ? QuantityText.parseUncertain(value.text(), dimension)
            : Uncertain.exact(QuantityText.parse(value.text(), dimension));
      } catch (QuantityFormatException e) {
        walk.fault(path, value, dimension == Dimension.MONEY ? form() : e.reason());
        return null;
      }
    }

    /** Some take a bare number for metres where others take it for millimetres; zero is zero. */
    private boolean isBareRead(double number) {
      return !needsUnit() || (number == 0 && least <= 0) || !Double.isFinite(number);
    }

    private boolean needsUnit() {
      return dimension == Dimension.LENGTH && !unit.equals(dimension.siSymbol());
    }

    /** What a text must look like. */
    private String form() {
      if (dimension == Dimension.MONEY) {
        return "must be a plain number in the money of the site, without a unit or sign";
      }
      if (needsUnit()) {
        double example = Math.max(least, Math.min(greatest, EXAMPLE_MILLIMETRES));
        return "must be a text with its unit, such as \"" + shown(example) + "\"";
      }
      return "must be a text such as \"" + example() + "\", or a bare number in " + unitName();
    }

    /** The units in which a bare number of metres would have been within the limits. */
    private String meant(Json value) {
      if (!(value instanceof Json.Num n) || !unit.equals("m") || n.value() <= greatest) {
        return "";
      }
      List<String> meant = new ArrayList<>();
      for (String other : List.of("cm", "mm")) {
        double metres = QuantityText.toSi(n.value(), dimension, other);
        if (metres >= Math.max(least, LEAST_MEANT) && metres <= greatest) {
          meant.add('"' + Numbers.plain(n.value()) + " " + other + '"');
        }
      }
      return "; a bare number is in m"
          + (meant.isEmpty() ? "" : ": did you mean " + String.join(" or ", meant) + "?");
    }

    /** In the unit of the key if that reads back to the last digit, or else in the SI unit. */
    Json write(double si) {
      if (unit.equals("1") || !Double.isFinite(si)) {
        return new Json.Num(0, si);
      }
      double inUnit = rounded(QuantityText.toUnit(si, dimension, unit));
      boolean exact = Double.doubleToLongBits(toSi(inUnit)) == Double.doubleToLongBits(si);
      return new Json.Text(0, exact ? Numbers.exact(inUnit) + " " + unit : inSi(si));
    }

    /** The text as it was written, unless code gave another value than that. */
    Json write(WrittenQuantity reading) {
      try {
        Uncertain said = QuantityText.parseUncertain(reading.text(), dimension);
        if (said.value() == reading.value()
            && said.standardUncertainty() == reading.standardUncertainty().orElse(0.0)) {
          return new Json.Text(0, reading.text());
        }
      } catch (QuantityFormatException e) {
        // A remark of the code that made the reading: the value speaks for itself.
        return new Json.Text(0, inSi(reading));
      }
      return new Json.Text(0, inSi(reading));
    }

    private String inSi(WrittenQuantity reading) {
      String value = inSi(reading.value());
      return reading.standardUncertainty().map(u -> value + " ± " + inSi(u)).orElse(value);
    }

    private String inSi(double si) {
      return Numbers.exact(si) + " " + dimension.siSymbol();
    }

    /** Drops the last digits, which are the noise of a conversion. */
    private static double rounded(double number) {
      return Double.parseDouble(Numbers.significant(number, WRITTEN_DIGITS));
    }

    private double toSi(double number) {
      return unit.equals(dimension.siSymbol())
          ? number
          : QuantityText.toSi(number, dimension, unit);
    }

    private String allowed() {
      return "must be from " + shown(least) + " to " + shown(greatest);
    }

    /** The limits in the unit that was written, where that is another than the limits' own. */
    private String allowed(Json value) {
      if (!(value instanceof Json.Text text)) {
        return allowed();
      }
      String written = text.text().strip();
      return QuantityText.symbols(dimension).stream()
          .filter(symbol -> !symbol.equals(unit) && endsWith(written, symbol))
          .findFirst()
          .map(symbol -> "must be from " + in(least, symbol) + " to " + in(greatest, symbol))
          .orElseGet(this::allowed);
    }

    /** A unit stands at the end, after a number or a blank: 3 m ends with m, 3 mm does not. */
    private static boolean endsWith(String written, String symbol) {
      int before = written.length() - symbol.length() - 1;
      return before >= 0
          && written.endsWith(symbol)
          && (written.charAt(before) == ' ' || Character.isDigit(written.charAt(before)));
    }

    private String in(double limit, String symbol) {
      double number = QuantityText.toUnit(toSi(limit), dimension, symbol);
      return Numbers.plain(rounded(number)) + " " + symbol;
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

    /** What was read, in the unit of the key and with as many digits as a tape or a scale gives. */
    Optional<String> echo(Json value, boolean doubted) {
      Uncertain read = read(value, "$", new Walk(), doubted);
      if (read == null) {
        return Optional.empty();
      }
      String text = inUnit(read.value());
      double doubt = read.standardUncertainty();
      return Optional.of(doubt > 0 ? text + " ± " + inUnit(si(read.value(), doubt)) : text);
    }

    /** In the SI unit; what is written after a plus-minus mark of a value of nothing. */
    double apart(String text) {
      String nothing = dimension.siSymbol().equals("1") ? "0" : "0 " + dimension.siSymbol();
      return QuantityText.parseUncertain(nothing + " ± " + text, dimension).standardUncertainty();
    }

    /** A difference counts from nothing, also where the unit's zero lies elsewhere. */
    private double si(double value, double doubt) {
      double difference = toUnit(value + doubt) - toUnit(value);
      return toSi(difference);
    }

    private double toUnit(double si) {
      return unit.equals("1") ? si : QuantityText.toUnit(si, dimension, unit);
    }

    private String inUnit(double si) {
      return shown(Double.parseDouble(Numbers.significant(toUnit(si), ECHOED_DIGITS)));
    }

    Map<String, Object> described() {
      Map<String, Object> form = new LinkedHashMap<>();
      form.put("dimension", dimension.label());
      form.put("units", List.copyOf(QuantityText.symbols(dimension)));
      if (needsUnit()) {
        form.put("range", shown(least) + " to " + shown(greatest));
      } else {
        form.put("bare", unit);
        form.put("least", least);
        form.put("most", greatest);
      }
      return form;
    }

    Map<String, Object> schema(boolean doubted) {
      Map<String, Object> schema = new LinkedHashMap<>();
      boolean bare = isBareRead(0) || !needsUnit();
      schema.put("type", bare ? List.of("number", "string") : "string");
      if (bare) {
        schema.put("minimum", needsUnit() ? 0.0 : least);
        schema.put("maximum", needsUnit() ? 0.0 : greatest);
      }
      schema.put("maxLength", 100);
      schema.put("pattern", "[0-9½¼¾⅓⅔⅛⅜⅝⅞]");
      schema.put("$comment", comment(doubted));
      return schema;
    }

    private String comment(boolean doubted) {
      if (dimension == Dimension.MONEY) {
        return "a sum of money: a plain number in the money of the site, never in per cent";
      }
      return "a "
          + dimension.label()
          + ": a number and one of "
          + String.join(", ", QuantityText.symbols(dimension))
          + (doubted ? "; ± and a standard uncertainty may follow" : "")
          + (needsUnit()
              ? "; from " + shown(least) + " to " + shown(greatest) + "; the unit must be written"
              : "; a bare number is in " + unitName());
    }
  }
}
