package io.github.seamstead.examples.forms;

import java.util.List;

/** The tables by file name, with their columns: written by one class and read by another. */
final class Forms {

  static final String SURVEY = "survey.csv";
  static final String STOCK = "stock.csv";
  static final String PEGS = "pegs.csv";

  static final String KIND = "kind";
  static final String FROM = "from";
  static final String TO = "to";
  static final String READING = "reading";
  static final String UNIT = "unit";
  static final String NAME = "name";
  static final String LENGTH = "length";
  static final String WIDTH = "width";
  static final String COUNT = "count";
  static final String KEPT = "reinforced edges";
  static final String FLAW_X = "flaw from left";
  static final String FLAW_Y = "flaw from bottom";
  static final String FLAW_WIDTH = "flaw along";
  static final String FLAW_HEIGHT = "flaw across";
  static final String FLAW_NOTE = "what is wrong";
  static final String PEG = "peg";
  static final String PULL = "pull when it moved";

  static final String DISTANCE = "distance";
  static final String RISE = "rise";

  static final List<String> SURVEY_COLUMNS =
      List.of("order", "stand", KIND, FROM, TO, "wanted", READING, UNIT);
  static final List<String> STOCK_COLUMNS =
      List.of(
          NAME,
          LENGTH,
          WIDTH,
          COUNT,
          KEPT,
          FLAW_X,
          FLAW_Y,
          FLAW_WIDTH,
          FLAW_HEIGHT,
          FLAW_NOTE,
          UNIT);
  static final List<String> PEG_COLUMNS = List.of(PEG, PULL, UNIT);

  /** Rows to fill at the heap; a spreadsheet takes more. */
  static final int STOCK_ROWS = 20;

  /** Pegs to test: the least that says anything of their scatter is three. */
  static final int PEG_ROWS = 5;

  private Forms() {}
}
