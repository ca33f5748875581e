package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A ratio that cannot be misread: every side has its name, and the basis is stated.
 *
 * @param parts two or more named amounts
 * @param basis what the amounts are parts of
 */
public record Proportion(List<Part> parts, Basis basis) {

  /**
   * One side of the ratio.
   *
   * @param name the material, such as {@code pit soil}; never just {@code clay} for a clay soil;
   *     not blank
   * @param amount number of parts, 0 or more
   */
  public record Part(String name, double amount) {

    public Part {
      Args.notBlank("name of a part", name);
      Args.notNegative("parts of " + name, amount, "");
    }
  }

  public Proportion {
    parts = Args.notEmpty("parts", parts);
    Args.require(
        parts.stream().anyMatch(part -> part.amount > 0),
        "proportion",
        "no amount above 0",
        "must have one");
  }

  /**
   * Scales the proportion so that the first part that is not zero becomes 1.
   *
   * @return the same ratio
   */
  public Proportion perFirst() {
    double first =
        parts.stream().mapToDouble(Part::amount).filter(a -> a > 0).findFirst().orElseThrow();
    return new Proportion(
        parts.stream().map(part -> new Part(part.name, part.amount / first)).toList(), basis);
  }

  /**
   * Writes the ratio with all sides named that it has anything of.
   *
   * @return for example {@code 1 part pit soil to 2½ parts washed sand, by dry mass}; {@code pit
   *     soil alone} if there is nothing else
   */
  public String text() {
    List<Part> some = parts.stream().filter(part -> part.amount > 0).toList();
    if (some.size() == 1) {
      return some.get(0).name + " alone";
    }
    return some.stream()
            .map(
                part ->
                    amount(part.amount)
                        + (part.amount == 1 || part.amount == 0.5 ? " part " : " parts ")
                        + part.name)
            .collect(Collectors.joining(" to "))
        + ", "
        + basis.label();
  }

  private static String amount(double amount) {
    double whole = Math.floor(amount);
    if (amount - whole == 0.5) {
      return whole == 0 ? "½" : Numbers.plain(whole) + "½";
    }
    return Numbers.significant(amount, 3);
  }
}
