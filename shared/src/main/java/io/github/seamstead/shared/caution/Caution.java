package io.github.seamstead.shared.caution;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.source.Source;
import java.util.Optional;

/**
 * A caution that goes with a result.
 *
 * <pre>{@code
 * Caution caution =
 *     Caution.of(Hazard.LIFTING, "a heavy bundle", "25 kg", Source.commonPractice("two lift"));
 * caution.hazard(); // LIFTING
 * }</pre>
 *
 * @param hazard what can hurt
 * @param risk what is at risk here, one or two plain sentences; not blank
 * @param limit the usual published limit in words with its unit, or what to do; not blank
 * @param source the source of the limit, if there is one
 */
public record Caution(Hazard hazard, String risk, String limit, Optional<Source> source) {

  /** Closes every caution. */
  public static final String DEFERENCE =
      "Local codes and licensed practice decide; this is a screening, not a certificate.";

  public Caution {
    Args.notBlank("risk", risk);
    Args.notBlank("limit", limit);
  }

  /**
   * Makes a caution whose limit has a source.
   *
   * @param hazard what can hurt
   * @param risk what is at risk
   * @param limit the usual published limit
   * @param source where the limit stands
   * @return the caution
   */
  public static Caution of(Hazard hazard, String risk, String limit, Source source) {
    return new Caution(hazard, risk, limit, Optional.of(source));
  }

  /**
   * Writes the caution as one paragraph that ends with {@link #DEFERENCE}.
   *
   * @return risk, limit, source and deference
   */
  public String text() {
    String from = source.map(s -> " (" + s.citation() + ")").orElse("");
    return risk + " " + limit + from + " " + DEFERENCE;
  }
}
