package io.github.seamstead.api.book;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Step;
import io.github.seamstead.shared.derivation.Typeset;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The worked steps on the page and as text files. */
class WorkedTest {

  private static final List<Derivation> SUMS =
      DemoJobs.plan("clay-bank", PlanOptions.defaults().withWorkedSteps()).derivations();

  @Test
  void everyStepStandsOnThePageOnce() {
    Derivation sum = SUMS.get(0);
    Markup body = new Markup();
    WorkedChapter.write(body, sum);
    String html = body.toString();
    assertThat(html.split("class=\"step\"", -1)).hasSize(1 + sum.steps().size());
    int at = 0;
    for (Step step : sum.steps()) {
      int next = html.indexOf(new Markup().text(step.name() + ":").toString(), at);
      assertThat(next).as(step.name()).isGreaterThanOrEqualTo(at);
      at = next;
    }
    assertThat(html).contains("<math");
  }

  @Test
  void sourcesAndSectionsStandWithTheirSteps() {
    for (Derivation sum : SUMS) {
      Markup body = new Markup();
      WorkedChapter.write(body, sum);
      String html = body.toString();
      for (Step step : sum.steps()) {
        step.source()
            .ifPresent(s -> assertThat(html).contains(new Markup().text(s.citation()).toString()));
        if (!step.section().isEmpty()) {
          assertThat(html).contains(new Markup().element("h4", step.section()).toString());
        }
      }
    }
  }

  @Test
  void theTextsHoldEveryDerivation() {
    String markdown = WorkedText.markdown(SUMS);
    String latex = WorkedText.latex(SUMS);
    assertThat(SUMS).hasSizeGreaterThan(3);
    for (Derivation sum : SUMS) {
      assertThat(markdown).contains(Typeset.markdown(sum));
      assertThat(latex).contains(Typeset.latex(sum));
    }
    assertThat(markdown).startsWith("# The sums, worked\n\n");
    assertThat(latex.indexOf("\\begin{document}")).isPositive();
    assertThat(latex).startsWith("\\documentclass").endsWith("\\end{document}\n");
    assertThat(count(latex, "\\begin{")).isEqualTo(count(latex, "\\end{"));
    assertThat(WorkedText.markdown(List.of())).isEqualTo("# The sums, worked\n\n");
  }

  private static int count(String text, String part) {
    return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
  }
}
