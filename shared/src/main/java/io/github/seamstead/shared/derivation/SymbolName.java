package io.github.seamstead.shared.derivation;

import java.util.Map;

/**
 * A symbol taken apart for typesetting: {@code rho_d} is ρ with subscript d, {@code x1} is x with
 * subscript 1.
 *
 * @param base the letter or word, Greek letters still spelled out
 * @param subscript what hangs below, empty if nothing
 */
record SymbolName(String base, String subscript) {

  private static final Map<String, String> GREEK =
      Map.ofEntries(
          Map.entry("alpha", "α"),
          Map.entry("beta", "β"),
          Map.entry("gamma", "γ"),
          Map.entry("delta", "δ"),
          Map.entry("epsilon", "ε"),
          Map.entry("eta", "η"),
          Map.entry("theta", "θ"),
          Map.entry("kappa", "κ"),
          Map.entry("lambda", "λ"),
          Map.entry("mu", "μ"),
          Map.entry("nu", "ν"),
          Map.entry("pi", "π"),
          Map.entry("rho", "ρ"),
          Map.entry("sigma", "σ"),
          Map.entry("tau", "τ"),
          Map.entry("phi", "φ"),
          Map.entry("chi", "χ"),
          Map.entry("psi", "ψ"),
          Map.entry("omega", "ω"),
          Map.entry("Delta", "Δ"),
          Map.entry("Sigma", "Σ"),
          Map.entry("Omega", "Ω"));

  static SymbolName of(String name) {
    int underscore = name.indexOf('_');
    if (underscore > 0) {
      return new SymbolName(
          name.substring(0, underscore), name.substring(underscore + 1).replace('_', ','));
    }
    int digits = name.length();
    while (digits > 1 && Character.isDigit(name.charAt(digits - 1))) {
      digits--;
    }
    return new SymbolName(name.substring(0, digits), name.substring(digits));
  }

  /** The base as it is shown, a Greek letter as itself. */
  String shownBase() {
    return GREEK.getOrDefault(base, base);
  }

  boolean isGreek() {
    return GREEK.containsKey(base);
  }
}
