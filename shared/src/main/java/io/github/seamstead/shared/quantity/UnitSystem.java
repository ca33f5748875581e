package io.github.seamstead.shared.quantity;

/** The family of units that a person reads results in. */
public enum UnitSystem {
  /** Metres, millimetres, kilograms, litres. */
  METRIC,
  /** Feet and inches with fractions, pounds, cubic feet and yards. */
  IMPERIAL
}
