package io.github.seamstead.api.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

/**
 * One self-contained HTML page: whole without a script or a network, readable on a phone and on
 * paper (A4 or Letter). Chapters come in the order in which they are added; the table of contents
 * follows them. Not thread-safe.
 */
public final class Page {

  private static final String STYLE =
      """
      :root{color-scheme:light}
      *{box-sizing:border-box}
      body{margin:0;background:#fff;color:#161616;font:1rem/1.5 system-ui,sans-serif;
        overflow-wrap:anywhere}
      header,main,nav,footer{max-width:46rem;margin:0 auto;padding:0 1rem}
      h1{font-size:1.6rem;line-height:1.2;margin:1.2rem 0 .4rem}
      h2{font-size:1.3rem;line-height:1.25;margin:2.2rem 0 .6rem;border-top:3px solid #161616;
        padding-top:.6rem}
      h3{font-size:1.08rem;margin:1.5rem 0 .4rem}
      h4{font-size:1rem;margin:1rem 0 .3rem}
      p{margin:.5rem 0}
      a{color:#0b4a6f}
      nav ol{columns:2;column-gap:1.5rem;padding-left:1.4rem}
      nav a{display:inline-block;padding:.2rem 0}
      .scroll{overflow-x:auto;margin:.6rem 0}
      table{border-collapse:collapse;width:100%;font-size:.94rem;overflow-wrap:normal}
      caption{text-align:left;font-weight:600;padding:.3rem 0}
      th,td{border:1px solid #8a8a82;padding:.3rem .45rem;text-align:left;vertical-align:top}
      th{background:#ececE6}
      td.n,th.n{text-align:right;font-variant-numeric:tabular-nums}
      figure{margin:1rem 0}
      figure svg{display:block;max-width:100%;height:auto}
      figcaption{font-size:.9rem;color:#3b3b3b;margin-top:.3rem}
      .caution{border:2px solid #161616;border-left-width:10px;padding:.5rem .8rem;margin:1rem 0}
      .note{border-left:4px solid #8a8a82;padding:.1rem .8rem;margin:.8rem 0}
      .tick{list-style:none;padding-left:0}
      .tick li{padding:.25rem 0 .25rem 2rem;position:relative}
      .tick li::before{content:"";position:absolute;left:0;top:.45rem;width:1.1rem;height:1.1rem;
        border:2px solid #161616}
      .key{font-size:1.5rem;font-weight:700}
      .card{border:3px solid #161616;padding:1rem;font-size:1.35rem}
      .chain{display:flex;flex-wrap:wrap;gap:.2rem .5rem;align-items:center;margin:.2rem 0 .1rem 1rem;
        overflow:auto hidden}
      .chain math{font-size:1.05rem;math-style:normal}
      .chain mfrac>*{math-style:normal}
      .chain math.long{font-size:.85rem}
      .src{font-size:.85rem;color:#4a4a4a;margin:0 0 .6rem 1rem}
      code{font-size:.92em}
      @media (max-width:30rem){nav ol{columns:1} h1{font-size:1.35rem}
        table{font-size:.85rem} th,td{padding:.25rem .3rem}}
      @media print{
        @page{margin:14mm}
        body{font-size:10.5pt}
        header,main,nav,footer{max-width:none;padding:0}
        h2{break-before:page;border-top:0}
        nav{break-after:auto}
        h2,h3,h4,caption{break-after:avoid}
        figure,tr,.caution,.card,.short{break-inside:avoid}
        thead,tr:first-child:not(:last-child){break-after:avoid}
        figure svg{max-height:125mm}
        details::details-content{content-visibility:visible;height:auto}
        summary{list-style:none}
        .scroll,.chain{overflow:visible}
        .scroll{padding:0 1px}
        table{font-size:.86em}
        .step{break-inside:avoid}
        .chain math,.chain math.long{font-size:1em}
        a{color:inherit;text-decoration:none}
        .card{break-before:page;break-after:page;font-size:1.7rem}
      }
      """;

  private static final String BACK = "back-part";

  /** Nothing runs and nothing is loaded: the page's own styles are all that is let in. */
  public static final String POLICY =
      "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

  private final String title;
  private final String language;
  private final List<String> titles = new ArrayList<>();
  private final List<String> anchors = new ArrayList<>();
  private final List<String> bodies = new ArrayList<>();
  private final List<String> sheetTitles = new ArrayList<>();
  private final List<String> sheetAnchors = new ArrayList<>();
  private final List<String> sheets = new ArrayList<>();
  private final List<String> marks = new ArrayList<>();
  private final StringBuilder style = new StringBuilder();
  private String script = "";
  private final Anchors given = new Anchors();
  private String lead = "";

  /**
   * Starts a page.
   *
   * @param title the page's title
   * @param language the language tag of its text, such as {@code en}
   */
  public Page(String title, String language) {
    this.title = title;
    this.language = language;
  }

  /**
   * Sets what stands under the title, before the contents.
   *
   * @param markup the markup
   * @return this page
   */
  public Page lead(Markup markup) {
    lead = markup.toString();
    return this;
  }

  /**
   * Adds a chapter.
   *
   * @param chapterTitle its title; its anchor is made of it and unique in the page
   * @param body the markup below the title
   * @return this page
   */
  public Page chapter(String chapterTitle, Markup body) {
    titles.add(chapterTitle);
    anchors.add(given.unique(chapterTitle));
    bodies.add(body.toString());
    return this;
  }

  /**
   * Adds a sheet that stands before all chapters. A page with sheets shows its chapters folded,
   * after them, as the back part.
   *
   * @param sheetTitle its title
   * @param anchor the id of its heading
   * @param sheet the whole sheet, with its heading of level 2
   * @return this page
   */
  public Page sheet(String sheetTitle, String anchor, Markup sheet) {
    sheetTitles.add(sheetTitle);
    sheetAnchors.add(anchor);
    sheets.add(sheet.toString());
    return this;
  }

  /**
   * Adds rules after the page's own.
   *
   * @param css the rules
   * @return this page
   */
  public Page style(String css) {
    style.append(css);
    return this;
  }

  /**
   * Sets the only script, at the end of the page. The page must be whole without it.
   *
   * @param text the script, made by this library
   * @return this page
   */
  public Page script(String text) {
    script = text;
    return this;
  }

  /**
   * Sets an attribute of the page's body.
   *
   * @param attribute its name
   * @param value its value
   * @return this page
   */
  public Page mark(String attribute, String value) {
    marks.add(attribute);
    marks.add(value);
    return this;
  }

  /**
   * Writes the page.
   *
   * @return an HTML document
   */
  public String html() {
    Markup page = new Markup();
    page.raw("<!DOCTYPE html>\n").open("html", "lang", language).open("head");
    page.empty("meta", "charset", "utf-8");
    page.empty("meta", "http-equiv", "Content-Security-Policy", "content", policy());
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.element("title", title).open("style").raw(STYLE).raw(style.toString()).close();
    page.closeLine();
    page.open("body", marks.toArray(String[]::new));
    page.open(
            "svg", "width", "0", "height", "0", "style", "position:absolute", "aria-hidden", "true")
        .raw(Canvas.DEFINITIONS)
        .closeLine();
    page.open("header").element("h1", title).raw(sheets.isEmpty() ? lead : "").closeLine();
    contents(page);
    page.open("main");
    sheets.forEach(page::raw);
    if (sheets.isEmpty()) {
      chapters(page);
    } else {
      page.open("section", "class", "back", "aria-labelledby", BACK);
      page.element("h2", "Back part", "id", BACK).raw(lead);
      folded(page);
      page.closeLine();
    }
    page.closeLine();
    if (!script.isEmpty()) {
      page.open("script").raw(script).closeLine();
    }
    return page.close().close().raw("\n").toString();
  }

  /** The policy; of scripts it lets in the page's own alone, known by its hash. */
  private String policy() {
    if (script.isEmpty()) {
      return POLICY;
    }
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
      return POLICY + "; script-src 'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private void contents(Markup page) {
    page.open("nav", "aria-label", "Contents").open("ol");
    for (int i = 0; i < sheets.size(); i++) {
      link(page, sheetTitles.get(i), sheetAnchors.get(i));
    }
    if (sheets.isEmpty()) {
      for (int i = 0; i < titles.size(); i++) {
        link(page, titles.get(i), anchors.get(i));
      }
    } else {
      link(page, "Back part", BACK);
    }
    page.close().closeLine();
  }

  private static void link(Markup page, String text, String anchor) {
    page.open("li").element("a", text, "href", "#" + anchor).closeLine();
  }

  private void chapters(Markup page) {
    for (int i = 0; i < titles.size(); i++) {
      String anchor = anchors.get(i);
      page.open("section", "aria-labelledby", anchor);
      page.element("h2", titles.get(i), "id", anchor).raw(bodies.get(i)).closeLine();
    }
  }

  private void folded(Markup page) {
    for (int i = 0; i < titles.size(); i++) {
      page.open("details", "class", "chapter").open("summary");
      page.element("h2", titles.get(i), "id", anchors.get(i)).close();
      page.raw(bodies.get(i)).closeLine();
    }
  }
}
