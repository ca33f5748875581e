package io.github.seamstead.api.job;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Says of every quantity of a job document how it was understood, so that who typed "17 ft 3 1/2
 * in" sees metres beside it. Read by the same kinds as the document itself.
 */
public final class Echoes {

  private Echoes() {}

  /**
   * Reads the quantities of a document, of which other values may be at fault.
   *
   * @param job the JSON text of a job document in the newest form
   * @return for the JSON path of each quantity that can be read, its number in the unit in which a
   *     bare number would be read, rounded to six digits, in the order of the document; empty if
   *     the text is no JSON
   */
  public static Map<String, String> of(String job) {
    Map<String, String> echoes = new LinkedHashMap<>();
    Json json = JsonText.read(job.getBytes(StandardCharsets.UTF_8), new Walk());
    if (json != null) {
      gather(json, Shapes.DOCUMENT, "$", echoes);
    }
    return echoes;
  }

  /**
   * Says a number of a job document with its unit.
   *
   * @param path where it stands, such as {@code $.stock.sheets[0].width}
   * @param value the number, in its SI unit
   * @return the number in the unit in which a bare number would be read there, rounded to six
   *     digits; empty if no plain number can stand there
   */
  public static Optional<String> of(String path, double value) {
    return DraftPath.parse(path)
        .flatMap(place -> place.kindIn(Shapes.DOCUMENT))
        .filter(kind -> kind.limits().isPresent())
        .flatMap(kind -> kind.echo(kind.write(value, path, Set.of())));
  }

  private static void gather(Json value, Kind<?> kind, String path, Map<String, String> echoes) {
    if (value instanceof Json.Obj object) {
      for (Json.Member member : object.members()) {
        kind.under(member.key())
            .ifPresent(under -> gather(member.value(), under, path + "." + member.key(), echoes));
      }
    } else if (value instanceof Json.Arr array) {
      kind.item().ifPresent(item -> items(array, item, path, echoes));
    } else {
      kind.echo(value).ifPresent(echo -> echoes.put(path, echo));
    }
  }

  private static void items(Json.Arr array, Kind<?> item, String path, Map<String, String> echoes) {
    for (int i = 0; i < array.items().size(); i++) {
      gather(array.items().get(i), item, path + "[" + i + "]", echoes);
    }
  }
}
