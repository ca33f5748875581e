package io.github.seamstead.assembly.ring;

import io.github.seamstead.shared.check.Args;

/**
 * A piece of the cover as it comes from cutting.
 *
 * @param name what is written on the piece, such as {@code 3}; not blank
 * @param leftLetter the left edge's letter, such as {@code L}; not blank
 * @param rightLetter the right edge's letter, such as {@code R}; not blank and not the left letter
 * @param goodSide how the crew tells the good side, such as {@code printed side}; not blank
 * @param template the template the piece was cut by; pieces of one template are alike; not blank
 * @param load mass, bulk, bunch and laid area
 */
public record Piece(
    String name,
    String leftLetter,
    String rightLetter,
    String goodSide,
    String template,
    Load load) {

  public Piece {
    name = Args.notBlank("piece name", name).strip();
    leftLetter = Args.notBlank("left letter of piece " + name, leftLetter).strip();
    rightLetter = Args.notBlank("right letter of piece " + name, rightLetter).strip();
    Args.notBlank("good side of piece " + name, goodSide);
    Args.notBlank("template of piece " + name, template);
    Args.require(
        !leftLetter.equalsIgnoreCase(rightLetter),
        "edges of piece " + name,
        leftLetter + " twice",
        "must have two letters");
  }

  /**
   * Makes a piece with edges L and R whose good side is called the good side.
   *
   * @param name not blank
   * @param load the load
   * @return the piece, of a template of its own
   * @throws IllegalArgumentException if the name is blank
   */
  public static Piece of(String name, Load load) {
    return new Piece(name, "L", "R", "good side", "template of " + name, load);
  }

  /**
   * Names the template.
   *
   * @param newTemplate not blank
   * @return the same piece, cut by that template
   */
  public Piece cutBy(String newTemplate) {
    return new Piece(name, leftLetter, rightLetter, goodSide, newTemplate, load);
  }

  /**
   * Writes what is marked at an edge.
   *
   * @param side which edge
   * @return name and letter, such as {@code 3R}
   */
  public String edgeLabel(Side side) {
    return name + (side == Side.LEFT ? leftLetter : rightLetter);
  }
}
