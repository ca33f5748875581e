package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.plan.JobPlan;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Writes the front of the book: the sheets that a crew carries, in the order of use. */
public final class Front {

  private static final int LONGEST_NAME = 36;

  private Front() {}

  /**
   * Writes the sheets onto a page, with the style and the script that they need.
   *
   * @param plan the plan
   * @param words how quantities are written
   * @param page where to
   * @param name the job's name, as it stands on every sheet
   * @param digest a few characters that tell this plan's results from others'
   * @param sums gives the id of the sum that a number comes from; empty if there is none
   * @return the drawings of the sheets by name
   */
  public static Map<String, Drawing> write(
      JobPlan plan,
      Words words,
      Page page,
      String name,
      String digest,
      Function<String, Optional<String>> sums) {
    String shown = shortened(name);
    Desk desk = sheets(plan, words, sums);
    List<Sheet> sheets = desk.sheets();
    for (int i = 0; i < sheets.size(); i++) {
      Sheet sheet = sheets.get(i);
      page.sheet(sheet.title(), sheet.anchor(), whole(sheet, i + 1, sheets.size(), shown, digest));
    }
    page.style(FrontStyle.css(shown, digest, plan.job().document().paper()));
    page.script(FrontScript.TEXT);
    page.mark("data-name", name);
    page.mark("data-job", Markup.anchor(name) + "-" + digest);
    return desk.drawings();
  }

  /** Writes the sheets in the order of use, without what stands round them. */
  static Desk sheets(JobPlan plan, Words words, Function<String, Optional<String>> sums) {
    Desk desk = new Desk(plan, words).linkNumbers(sums);
    WorkPlan work = WorkPlan.of(desk);
    ChangeSheet.write(desk);
    StartSheet.write(desk, work);
    SafetySheet.write(desk);
    DaySheets.write(desk, work);
    FrameCard.write(desk);
    SurveyForm.write(desk);
    PieceCards.write(desk);
    CutCards.write(desk);
    JoinCard.write(desk);
    GroupCards.write(desk);
    RopeCard.write(desk);
    MixerCard.write(desk);
    WaitingCard.write(desk, work);
    SoilCard.write(desk);
    LookAhead.write(desk, work);
    return desk;
  }

  /** A name as it stands at the edge of every sheet; the whole of it is the title of the page. */
  static String shortened(String name) {
    return name.codePointCount(0, name.length()) <= LONGEST_NAME
        ? name
        : name.substring(0, name.offsetByCodePoints(0, LONGEST_NAME)).strip() + "…";
  }

  private static Markup whole(Sheet sheet, int number, int of, String name, String digest) {
    Markup m = new Markup();
    m.open("details", "class", "sheet " + sheet.kind().style(), "open", "open");
    m.open("summary");
    m.element("h2", sheet.title(), "id", sheet.anchor());
    m.element("span", "", "class", "count");
    m.close();
    m.open("div", "class", "in").raw(sheet.body().toString());
    m.open("p", "class", "tag");
    m.element("bdi", name);
    m.text(" · " + sheet.part() + " · sheet " + number + " of " + of + " · job " + digest);
    m.text(" · date ");
    m.element("span", "", "class", "date");
    m.close().close();
    m.closeLine();
    return m;
  }
}
