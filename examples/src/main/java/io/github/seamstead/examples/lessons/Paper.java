package io.github.seamstead.examples.lessons;

/** What the sheets are printed on, and the style that both papers share. */
public enum Paper {
  /** 210 by 297 mm. */
  A4("A4"),
  /** 8.5 by 11 inches. */
  LETTER("letter");

  private static final String STYLE =
      """
      .chain math,.line math{math-style:normal}
      .chain math,.chain math.long{font-size:1.08rem}
      .chain{align-items:baseline}
      .blank{display:inline-block;min-width:5.5em;border-bottom:1.2px solid #161616;height:1.3em}
      .room{height:var(--room,24mm);background:repeating-linear-gradient(#fff 0 calc(8mm - 1px),
        #bbb calc(8mm - 1px) 8mm);print-color-adjust:exact;-webkit-print-color-adjust:exact;
        margin:.3rem 0 .8rem}
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
        h3{margin:4mm 0 1mm}
      }
      """;

  private final String size;

  Paper(String size) {
    this.size = size;
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
