package io.github.seamstead.api.chapter.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.testing.Fixture;
import io.github.seamstead.api.testing.SmallJob;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Six panels, each with a label of its own, and the pieces of a cap that share one label. */
class PieceNamesTest {

  private static final List<CutShape> SHAPES =
      JobPlanner.plan(SmallJob.job(), Fixture.options(Chapter.PATTERN))
          .cover()
          .orElseThrow()
          .cuts();

  private final PieceNames names = PieceNames.of(SHAPES);

  @Test
  void labelsThatAreSharedAreNumberedInTheOrderOfTheShapes() {
    List<String> expected = new ArrayList<>(List.of("1", "2", "3", "4", "5", "6"));
    long caps = SHAPES.stream().flatMap(s -> s.pieces().stream()).count() - 6;
    assertThat(caps).isGreaterThan(1);
    for (int number = 1; number <= caps; number++) {
      expected.add("cap " + number);
    }
    assertThat(names.all().keySet()).containsExactlyInAnyOrderElementsOf(expected);
    List<PieceNames.Named> inOrder = new ArrayList<>();
    for (CutShape shape : SHAPES) {
      for (int copy = 1; copy <= shape.pieces().size(); copy++) {
        inOrder.add(new PieceNames.Named(shape, copy));
      }
    }
    assertThat(names.all().values()).containsExactlyElementsOf(inOrder);
    assertThatThrownBy(() -> names.all().clear()).isInstanceOf(UnsupportedOperationException.class);
  }

  @Test
  void aNameLeadsToItsPieceAndBack() {
    names
        .all()
        .forEach(
            (name, named) -> {
              assertThat(named.piece()).isSameAs(named.shape().pieces().get(named.copy() - 1));
              assertThat(name).isIn(named.piece().label(), "cap " + number(name));
              assertThat(names.find(name)).contains(named);
              assertThat(names.name(named.shape().id(), named.copy())).isEqualTo(name);
            });
  }

  private static String number(String name) {
    return name.substring(name.length() - 1);
  }

  @Test
  void whatIsNoPieceHasTheNameOfItsShape() {
    assertThat(names.find("7")).isEmpty();
    assertThat(names.find("cap")).isEmpty();
    assertThat(names.name("another", 1)).isEqualTo("another");
    assertThat(names.name(SHAPES.get(0).id(), 99)).isEqualTo(SHAPES.get(0).id());
  }
}
