package io.github.seamstead.api.chapter.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CsvTest {

  @Test
  void quotesWhatNeedsIt() {
    assertThat(Csv.cell("plain")).isEqualTo("plain");
    assertThat(Csv.cell("a, \"b\"")).isEqualTo("\"a, \"\"b\"\"\"");
    assertThat(Csv.cell("two\nlines")).isEqualTo("\"two\nlines\"");
  }

  @Test
  void aNameThatASpreadsheetWouldRunStaysText() {
    assertThat(Csv.cell("=1+1")).isEqualTo("'=1+1");
    assertThat(Csv.cell("@cmd")).isEqualTo("'@cmd");
    assertThat(Csv.cell("-5")).isEqualTo("-5");
  }
}
