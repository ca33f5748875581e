package io.github.seamstead.api.book.front;

import io.github.seamstead.api.job.Paper;

/** The look of the front, on a phone and on paper with a binding edge. */
final class FrontStyle {

  private static final String STYLE =
      """
      body{font-family:Arial,"Liberation Sans",Helvetica,sans-serif}
      .sheet{margin:0 0 .6rem;border:1px solid #767670;border-radius:.3rem}
      .sheet>summary{display:flex;gap:.6rem;align-items:center;padding:.6rem .8rem;min-height:3rem;
        cursor:pointer;background:#f0f0ec}
      .sheet>summary h2{margin:0;border:0;padding:0;flex:1;font-size:1.2rem}
      .sheet>summary::before{content:"\\25b8";font-size:1.2rem}
      .sheet[open]>summary::before{content:"\\25be"}
      .sheet>summary::-webkit-details-marker{display:none}
      .date{display:inline-block;width:4.5em;border-bottom:1px solid #161616}
      .count{font-variant-numeric:tabular-nums;white-space:nowrap}
      .sheet>.in{padding:.4rem .8rem}
      .chapter summary{cursor:pointer;min-height:2.75rem;display:flex;align-items:center;gap:.5rem}
      .chapter>summary::before{content:"\\25b8"}
      .chapter[open]>summary::before{content:"\\25be"}
      .chapter>summary h2{display:inline;border:0;margin:0;padding:0;font-size:1.15rem}
      .lead{font-size:1.06rem}
      .small,.tag,.sources{font-size:.86rem;color:#3b3b3b}
      .two{display:grid;grid-template-columns:minmax(0,auto) minmax(0,1fr);gap:.4rem 1.2rem;
        align-items:start}
      .two.even{grid-template-columns:1fr 1fr}
      .two>*,.three>*{min-width:0}
      .three{display:grid;grid-template-columns:auto minmax(0,1fr);gap:.4rem 1.2rem;
        align-items:start}
      .wrap{display:flex;flex-wrap:wrap;gap:.4rem 1rem}
      .wrap>*{min-width:0}
      .two.mixer{grid-template-columns:minmax(0,22rem) minmax(0,1fr)}
      figure.pic{margin:.3rem 0}
      figure.pic.broad svg{max-width:none}
      .facts p{border-left:.3rem solid #161616;padding-left:.5rem;margin:.55rem 0;line-height:1.25}
      .facts b{display:block;font-size:1.35rem}
      .ticks,.lights,.seams,.pause ul,.end ul{list-style:none;padding:0;margin:.2rem 0}
      .ticks i{color:#3b3b3b}
      .lights li{padding-left:1.8rem;position:relative;margin:.4rem 0}
      .sign{position:absolute;left:0;top:-.1rem;font-size:1.3rem;line-height:1.4}
      .tk{display:grid;grid-template-columns:2rem minmax(0,1fr);align-items:start;padding:.55rem 0;
        min-height:2.75rem}
      input[type=checkbox]{width:1.5rem;height:1.5rem;margin:0 .3rem 0 0;vertical-align:middle;
        accent-color:#161616}
      .hit{display:inline-grid;min-width:2.75rem;min-height:2.75rem;place-items:center}
      .hit input[type=checkbox]{margin:0}
      .blank{font:inherit;width:5.5rem;min-height:2.75rem;border:1px solid #767670;border-radius:.2rem;
        background:#fff;color:#161616}
      .cond{display:grid;grid-template-columns:1fr 1.4fr;border:2px solid #161616;margin:.4rem 0;
        gap:.2rem .9rem;padding:.3rem .5rem}
      .cond dt{font-weight:700;display:inline;margin-right:.35rem}.cond dd{margin:0;display:inline}
      .cond .long{grid-column:1/3}
      .steps{list-style:none;padding:0;margin:.3rem 0}
      .steps>li{border-bottom:1px solid #b8b8ae}
      .step-line{display:grid;grid-template-columns:minmax(0,1fr) auto;gap:.5rem;align-items:center}
      .want{white-space:nowrap}
      .pause{border:3px solid #161616;padding:.4rem .7rem;margin:.6rem 0}
      .ph{font-weight:700;margin:.1rem 0}
      .warn{border-left:.7rem solid #161616;padding:.3rem .6rem;margin:.5rem 0;font-size:1.06rem}
      .warn a,.foot a{color:inherit}
      .model,.check{border:1px solid #161616;padding:.3rem .5rem}
      .seams{columns:2;column-gap:1rem}.seams li{break-inside:avoid}
      .recipes{display:grid;grid-template-columns:1fr 1fr;gap:.6rem}
      .recipe ul{padding-left:1.1rem;margin:.2rem 0}.recipe li{font-size:1.1rem}
      .mix{font-size:1.2rem;font-weight:700}
      .form{columns:14rem;column-gap:1rem}
      .form p{display:flex;justify-content:space-between;align-items:end;gap:.4rem;margin:.2rem 0}
      .copies input{margin-right:.5rem}
      .hazard{margin:.35rem 0}
      table.names{width:auto}
      .bar{position:sticky;bottom:0;background:#161616;padding:.3rem .8rem;display:flex;flex-wrap:wrap;
        gap:.6rem;align-items:center;z-index:1}
      .bar a{color:#fff;flex:1;min-height:2.75rem;display:flex;align-items:center}
      .bar button{font:inherit;min-height:2.75rem;padding:0 .8rem}
      .bar textarea{width:100%;font:inherit}
      @media (max-width:40rem){.two,.two.even,.two.mixer,.three,.cond{grid-template-columns:minmax(0,1fr)}
        .cond .long{grid-column:1}.seams{columns:1}.recipes{grid-template-columns:1fr}
        .foot a,.warn a{display:inline-flex;min-height:2.75rem;align-items:center}
        main{padding:0 .5rem}.sheet>.in{padding:.3rem .5rem}
        figure.pic.broad svg{width:auto}}
      @media print{
        @page{margin:10mm 10mm 14mm 20mm}
        .bar,.sheet>summary::before,.chapter>summary::before,.count,nav{display:none}
        header h1{font-size:9pt;margin:0 0 1mm}
        body{font-size:10.5pt;line-height:1.3}
        .sheet{border:0;border-radius:0;margin:0 0 2mm;position:relative}
        .sheet>summary{padding:0;min-height:0;background:none;border-top:.7mm solid #161616}
        .sheet>summary h2{font-size:13pt;margin:3.4mm 0 .3mm;break-before:auto}
        .sheet>.in{padding:0}
        .sheet.half{break-inside:avoid}
        .sheet.page{break-before:page}
        .sheet.page:first-child{break-before:auto}
        .sheet.page+.sheet{break-before:page}
        .sheet.wide{page:wide;break-inside:avoid}
        .sheet h3{margin:2.5mm 0 .5mm;font-size:11pt}
        .sheet p{margin:.8mm 0}
        .tag{font-size:8pt;line-height:1;position:absolute;right:0;top:1.2mm;white-space:nowrap}
        .sheet .tag{margin:0}
        .three{grid-template-columns:auto minmax(0,1fr);gap:1mm 2mm}
        .sheet .three table.names td,.sheet .three table.names th{padding:.3mm .8mm}
        .wrap{gap:1mm 2mm}.wrap .scroll{margin:.6mm 0}
        .check{padding:.3mm 1.5mm}
        .fields .blank{width:13mm}
        .two{grid-template-columns:auto minmax(0,1fr);gap:1mm 5mm}
        .two.mixer{grid-template-columns:70mm minmax(0,1fr)}
        .recipe li{font-size:11pt;line-height:1.2}.recipe p{line-height:1.2}
        .recipe h3,.recipes{margin-top:1mm}
        .two.even{grid-template-columns:1fr 1fr}
        .two.even,.cond{break-inside:avoid}
        figure.pic svg{max-height:none;max-width:100%}
        .tk{padding:.3mm 0;min-height:0;grid-template-columns:7mm minmax(0,1fr)}
        .hit{display:inline;min-width:0;min-height:0}
        .hit input[type=checkbox]{margin:0 1mm 0 0}
        input[type=checkbox]{appearance:none;width:4.4mm;height:4.4mm;border:.35mm solid #111;
          background:#fff;margin:0 1mm 0 0}
        input[type=checkbox]:checked{background:linear-gradient(45deg,#fff 44%,#111 44% 56%,#fff 56%)}
        .blank{border:0;border-bottom:.25mm solid #111;border-radius:0;width:24mm;min-height:4.4mm;padding:0;font-size:9pt}
        table.names input[type=checkbox]{width:3.9mm;height:3.9mm}
        .cond{margin:.8mm 0;border-width:.35mm;padding:.5mm 1.5mm;gap:.5mm 4mm}
        .step-line{break-inside:avoid}
        .warn{font-size:12pt;margin:1mm 0;padding:.6mm 2mm}
        .pause{border-width:.5mm;padding:.4mm 2mm;margin:1mm 0;break-inside:avoid}
        .list{display:grid;grid-template-columns:24mm minmax(0,1fr);gap:0 2mm}
        .list .ph{line-height:1.2;margin:.5mm 0}
        .pair{display:flex;flex-wrap:wrap;gap:0 3mm}
        .pair .scroll{margin:.6mm 0;flex:0 1 auto;max-width:88mm}
        .pair table.names td,.pair table.names th{padding:.3mm .8mm}
        .seams .tk{padding:.2mm 0}
        .seams.splices{columns:3}
        .sheet.wide{margin:0}
        .sheet.wide .scroll{margin:1mm 0}
        .sheet.wide h3{margin:1.5mm 0 .5mm}
        .sheet.wide table.names td,.sheet.wide table.names th{padding:.2mm .8mm}
        .pause ul,.end ul{columns:2;column-gap:4mm}
        .pause .tk,.end .tk{padding:.2mm 0}
        .tk,.lead,.cond{line-height:1.16}
        .lead{font-size:10.5pt}
        .end{margin-top:.5mm}.end .stop{margin:.3mm 0}
        table.names{font-size:10pt}
        table.names td,table.names th{padding:.3mm 1.2mm;line-height:1.15}
        .facts p{margin:1.6mm 0}
        .facts b{font-size:15pt}
        .sheet .small{font-size:9pt;line-height:1.15}
        .mix{font-size:12pt}
        .form{columns:5;column-gap:3mm}
        .form p{margin:0;break-inside:avoid;white-space:nowrap}
        .form .blank{width:12mm}
        .safety{columns:2;column-gap:5mm;font-size:12pt}
        .safety p{margin:.5mm 0}.safety sup{line-height:0;font-size:9pt}
        .safety h3{margin-top:1mm}
        .moment{break-inside:auto}
        .hazard{margin:.4mm 0;line-height:1.1}
        .sources{font-size:8pt;line-height:1.1}
        .back{font-size:10pt}
        .back h2{break-before:auto;border-top:.35mm solid #161616;font-size:12pt;margin:3mm 0 1mm}
        .back table{font-size:10pt}
        .back figure{max-width:90mm}
        .back figure svg{width:90mm;max-height:none}
        .back .card{break-before:auto;break-after:auto;font-size:10pt;border-width:.5mm;padding:2mm}
        .chapter summary{min-height:0}
        .back details:last-of-type div:last-child tr:nth-last-child(-n+13){break-before:avoid}
        .back .step:nth-last-child(-n+9){break-before:avoid}
      }
      @media print and (max-height:285mm){body,.lead{font-size:10pt}}
      """;

  private FrontStyle() {}

  /**
   * The style for a paper, with the job's name and digest at the foot of every printed page. A wide
   * sheet lies across its page, which is bound at the top.
   */
  static String css(String name, String digest, Paper paper) {
    String foot = quoted(name + " \u00b7 job " + digest);
    String size = paper == Paper.A4 ? "A4" : "letter";
    return STYLE
        + "@media print{@page wide{size:"
        + size
        + " landscape;margin:20mm 10mm 14mm 10mm}@page{size:"
        + size
        + ";@bottom-left{content:"
        + foot
        + ";font:8pt sans-serif}@bottom-right{content:\"page \" counter(page) \" of \""
        + " counter(pages);font:8pt sans-serif}}}\n";
  }

  /** Writes a text as a CSS string in which every character but letters and digits is a number. */
  private static String quoted(String text) {
    StringBuilder css = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              boolean plain = c < 128 && (Character.isLetterOrDigit(c) || c == ' ');
              if (plain) {
                css.appendCodePoint(c);
              } else {
                css.append('\\').append(Integer.toHexString(c)).append(' ');
              }
            });
    return css.append('"').toString();
  }
}
