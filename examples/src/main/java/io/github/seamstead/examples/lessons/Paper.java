package io.github.seamstead.examples.lessons;

import io.github.seamstead.shared.check.ArgumentFault;

/** What the sheets are printed on, and the style that both papers share. */
public enum Paper {
  /** 210 by 297 mm. */
  A4("A4"),
  /** 8.5 by 11 inches. */
  LETTER("letter");

  private static final String STYLE =
      """
      main math{math-style:normal}
      .chain math,.chain math.long{font-size:1.08rem}
      .chain{align-items:baseline}
      .blank{display:inline-block;min-width:5.5em;border-bottom:1.2px solid #161616;height:1.3em}
      .rule{height:8mm;border-bottom:1px solid #999}
      .room{margin:0 0 .8rem;break-inside:avoid}
      .line{margin:.35rem 0 .35rem 1rem}
      .facts{columns:2;column-gap:1.5rem}
      .facts p{margin:.1rem 0;break-inside:avoid}
      .task{break-inside:avoid}
      .choice{list-style:none;padding-left:1rem}
      .choice li::before{content:"☐";margin-right:.6em}
      .figure-beside figure{max-width:30rem}
      @media (min-width:80rem){
        header,main,nav{max-width:76rem}
        main{font-size:1.5rem}
        main h2{font-size:2.2rem}
        main h3{font-size:1.8rem}
        main .src{font-size:1.2rem}
        main table,figcaption{font-size:1.2rem}
        .chain math,.chain math.long{font-size:1.7rem}
        .figure-beside{display:grid;grid-template-columns:1fr 1fr;gap:2rem;align-items:start}
        .figure-beside figure{max-width:none}
      }
      @media (max-width:40rem){.facts{columns:1}}
      @media print{
        body{font-size:11pt}
        main{font-size:11pt}
        .src{font-size:10pt}
        table{font-size:10pt}
        .chain math,.chain math.long,.line math{font-size:12pt}
        .figure-beside{display:block}
        .figure-beside figure{max-width:120mm;margin:2mm auto}
        figure svg{max-height:70mm}
        main h2{font-size:15pt}
        main h3{font-size:12.5pt;margin:4mm 0 1mm}
      }
      """;

  private final String size;

  Paper(String size) {
    this.size = size;
  }

  /** Sheets to hand out: on paper neither title nor contents, each sheet on a page of its own. */
  static final String HAND_OUT =
      "@media print{header,nav{display:none}main section:first-of-type h2{break-before:avoid}}\n";

  /**
   * Reads a paper's name.
   *
   * @param name {@code A4} or {@code letter}, in any case
   * @return the paper
   * @throws IllegalArgumentException if it is another name
   */
  public static Paper of(String name) {
    for (Paper paper : values()) {
      if (paper.size.equalsIgnoreCase(name)) {
        return paper;
      }
    }
    throw ArgumentFault.of("paper", name, "must be A4 or letter", "", "");
  }

  /** The style of a page on this paper, with numbered sheets. */
  String style(String running) {
    return STYLE
        + "@media print{@page{size:"
        + size
        + ";margin:16mm 16mm 18mm;@bottom-left{content:\""
        + running
        + "\";font:9pt system-ui,sans-serif}@bottom-right{content:\"page \" counter(page) \" of \""
        + " counter(pages);font:9pt system-ui,sans-serif}}}\n";
  }
}
