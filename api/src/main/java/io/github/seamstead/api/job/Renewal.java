package io.github.seamstead.api.job;

import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Brings documents of an earlier version of the form to the newest: keys get their present names,
 * and every value stays as somebody wrote it, "17 ft 3 1/2 in" as well.
 */
public final class Renewal {

  private static final String VERSION = "seamstead";

  private Renewal() {}

  /**
   * Renews a job document.
   *
   * @param json the JSON text of a job document that is read without a fault
   * @return the text itself if it is of the newest version; else indented JSON text that ends with
   *     a line break and is read as the same job
   * @throws JobFaultsException if the text is no JSON
   */
  public static String job(String json) {
    return renewed(json, Shapes.DOCUMENT);
  }

  /**
   * Renews a diary.
   *
   * @param json the JSON text of a diary that is read without a fault
   * @return the text itself if it is of the newest version; else indented JSON text that ends with
   *     a line break and is read as the same diary
   * @throws JobFaultsException if the text is no JSON
   */
  public static String diary(String json) {
    return renewed(json, DiaryShapes.diaryDocument());
  }

  private static String renewed(String json, Shape<?> root) {
    Walk walk = new Walk();
    Json tree = FileText.json(json.getBytes(StandardCharsets.UTF_8), walk);
    if (!Forms.enter(tree, walk) || walk.form() >= Forms.NEWEST) {
      return json;
    }
    Json renewed = renewed(tree, root);
    return renewed instanceof Json.Obj document ? JobWriter.text(stated(document)) : json;
  }

  private static Json stated(Json.Obj document) {
    Json.Num newest = new Json.Num(0, Forms.NEWEST);
    return new Json.Obj(
        document.line(),
        document.members().stream()
            .map(m -> m.key().equals(VERSION) ? new Json.Member(VERSION, m.line(), newest) : m)
            .toList());
  }

  private static Json renewed(Json value, Kind<?> kind) {
    if (value instanceof Json.Obj object) {
      List<Json.Member> members =
          object.members().stream().map(member -> renewed(member, kind)).toList();
      return new Json.Obj(object.line(), members);
    }
    if (value instanceof Json.Arr array && kind.item().isPresent()) {
      Kind<?> item = kind.item().get();
      return new Json.Arr(
          array.line(), array.items().stream().map(each -> renewed(each, item)).toList());
    }
    return value;
  }

  private static Json.Member renewed(Json.Member member, Kind<?> kind) {
    String name = kind instanceof Shape<?> shape ? shape.present(member.key()) : member.key();
    Json value =
        kind.under(name).map(under -> renewed(member.value(), under)).orElse(member.value());
    return new Json.Member(name, member.line(), value);
  }
}
