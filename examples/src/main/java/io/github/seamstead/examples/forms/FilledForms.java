package io.github.seamstead.examples.forms;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.seamstead.shared.check.ArgumentFault;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Puts what was filled in on the forms into a job document. A reading of the same kind between the
 * same corners, a sheet of the same name and the pulls of an earlier test are replaced; everything
 * else of the document stays as it is. What is put in is judged by the reader of jobs alone.
 */
public final class FilledForms {

  private static final Pattern PARTING = Pattern.compile("[ ,;/+]+");
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private final ObjectNode job;
  private int taken;

  private FilledForms(ObjectNode job) {
    this.job = job;
  }

  /**
   * Gives the document with the values of the forms.
   *
   * @param job the text of the job document, a JSON object
   * @param folder where the filled tables lie; a table that is not there changes nothing
   * @return the text of the new document
   * @throws ArgumentFault if a table cannot be understood, or no value is filled in
   * @throws IOException if a file cannot be read
   */
  public static String into(String job, Path folder) throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    JsonNode tree = mapper.readTree(job);
    if (!(tree instanceof ObjectNode object)) {
      throw ArgumentFault.finding("job: is not a JSON object");
    }
    FilledForms filled = new FilledForms(object);
    filled.survey(rows(folder.resolve(Forms.SURVEY), Forms.FROM, Forms.TO, Forms.READING));
    filled.stock(rows(folder.resolve(Forms.STOCK), Forms.NAME, Forms.LENGTH, Forms.WIDTH));
    filled.pegs(rows(folder.resolve(Forms.PEGS), Forms.PULL));
    if (filled.taken == 0) {
      throw ArgumentFault.finding(
          "--filled: " + folder + " has no table with a value filled in",
          "fill survey.csv, stock.csv or pegs.csv as `forms` writes them");
    }
    return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(object) + "\n";
  }

  private void survey(List<CSVRecord> rows) {
    for (CSVRecord row : rows) {
      String reading = quantity(row, Forms.READING);
      if (reading.isEmpty()) {
        continue;
      }
      String from = cell(row, Forms.FROM);
      String to = cell(row, Forms.TO);
      if (!FieldForms.isNode(from) || !FieldForms.isNode(to)) {
        throw ArgumentFault.of(
            place(Forms.SURVEY, row),
            "\"" + from + "\" to \"" + to + "\"",
            "must be two corners such as B1 and T1",
            "",
            "");
      }
      boolean rise = cell(row, Forms.KIND).equalsIgnoreCase(Forms.RISE);
      String list = rise ? "heights" : "distances";
      ObjectNode frame = object(job, "frame");
      ArrayNode readings = array(object(frame, "survey"), list);
      ObjectNode entry = node().put("from", from).put("to", to);
      put(readings, entry.put(rise ? "rise" : "distance", reading), List.of("from", "to"));
      taken++;
    }
  }

  private void stock(List<CSVRecord> rows) {
    String last = "";
    for (CSVRecord row : rows) {
      String name = cell(row, Forms.NAME);
      if (name.isEmpty()) {
        continue;
      }
      ArrayNode sheets = array(object(job, "stock"), "sheets");
      if (!name.equals(last)) {
        ObjectNode sheet = node().put("id", name);
        sheet.put("length", quantity(row, Forms.LENGTH));
        sheet.put("width", quantity(row, Forms.WIDTH));
        count(row, sheet);
        edges(row, sheet);
        put(sheets, sheet, List.of("id"));
        taken++;
        last = name;
      }
      if (!quantity(row, Forms.FLAW_X).isEmpty()) {
        flaw(row, find(sheets, name));
      }
    }
  }

  private static void count(CSVRecord row, ObjectNode sheet) {
    String count = cell(row, Forms.COUNT);
    if (count.isEmpty()) {
      return;
    }
    try {
      sheet.put("count", Integer.parseInt(count));
    } catch (NumberFormatException e) {
      throw ArgumentFault.of(
          place(Forms.STOCK, row) + ", " + Forms.COUNT,
          "\"" + count + "\"",
          "must be a whole number",
          "",
          "");
    }
  }

  private static void edges(CSVRecord row, ObjectNode sheet) {
    String kept = cell(row, Forms.KEPT);
    if (!kept.isEmpty()) {
      ArrayNode edges = sheet.putArray("reinforced");
      PARTING.splitAsStream(kept.toLowerCase(Locale.ROOT)).forEach(edges::add);
    }
  }

  private void flaw(CSVRecord row, ObjectNode sheet) {
    ObjectNode flaw = array(sheet, "flaws").addObject();
    flaw.put("x", quantity(row, Forms.FLAW_X)).put("y", quantity(row, Forms.FLAW_Y));
    flaw.put("width", quantity(row, Forms.FLAW_WIDTH));
    flaw.put("height", quantity(row, Forms.FLAW_HEIGHT));
    String note = cell(row, Forms.FLAW_NOTE);
    if (!note.isEmpty()) {
      flaw.put("note", note);
    }
  }

  private void pegs(List<CSVRecord> rows) {
    List<String> pulls = new ArrayList<>();
    rows.stream()
        .map(row -> quantity(row, Forms.PULL))
        .filter(pull -> !pull.isEmpty())
        .forEach(pulls::add);
    if (!pulls.isEmpty()) {
      ArrayNode list = object(object(job, "site"), "pegs").putArray("pulls");
      pulls.forEach(list::add);
      taken += pulls.size();
    }
  }

  /** A value with its unit: the cell's own, or the one in the column of units. */
  private static String quantity(CSVRecord row, String column) {
    String value = cell(row, column);
    boolean bare = !value.isEmpty() && value.matches("[-+]?[0-9]+([.,][0-9]+)?");
    String unit = bare ? cell(row, Forms.UNIT) : "";
    if (bare && unit.isEmpty()) {
      throw ArgumentFault.of(
          "row " + row.getRecordNumber() + ", " + column,
          value,
          "must have its unit, beside it or in the column \"unit\"",
          "",
          "");
    }
    return bare ? value.replace(',', '.') + " " + unit : value;
  }

  private static String cell(CSVRecord row, String column) {
    return row.isMapped(column) && row.isSet(column) ? row.get(column).strip() : "";
  }

  private static String place(String file, CSVRecord row) {
    return file + ", row " + row.getRecordNumber();
  }

  private static List<CSVRecord> rows(Path file, String... needed) throws IOException {
    if (!Files.exists(file)) {
      return List.of();
    }
    String text = Files.readString(file, StandardCharsets.UTF_8);
    String plain = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    String first = plain.lines().findFirst().orElse("");
    // A spreadsheet of a country that writes decimals with a comma parts its cells by semicolons.
    char parting = first.chars().filter(c -> c == ';').count() > 2 ? ';' : ',';
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(parting)
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreEmptyLines(true)
            .get();
    try (Reader reader = new StringReader(plain)) {
      List<CSVRecord> rows = format.parse(reader).getRecords();
      for (String column : needed) {
        if (!rows.isEmpty() && !rows.get(0).isMapped(column)) {
          throw ArgumentFault.of(
              file.getFileName() + ", first line",
              "no column \"" + column + "\"",
              "must have the columns that `forms` writes",
              "",
              "");
        }
      }
      return rows;
    } catch (IllegalArgumentException e) {
      if (e instanceof ArgumentFault fault) {
        throw fault;
      }
      throw ArgumentFault.finding(file.getFileName() + ": is no table of comma-separated values")
          .causedBy(e);
    }
  }

  private static ObjectNode node() {
    return JsonNodeFactory.instance.objectNode();
  }

  private static ObjectNode object(ObjectNode parent, String key) {
    return parent.get(key) instanceof ObjectNode there ? there : parent.putObject(key);
  }

  private static ArrayNode array(ObjectNode parent, String key) {
    return parent.get(key) instanceof ArrayNode there ? there : parent.putArray(key);
  }

  private static ObjectNode find(ArrayNode list, String id) {
    for (JsonNode entry : list) {
      if (entry instanceof ObjectNode object && object.path("id").asText().equals(id)) {
        return object;
      }
    }
    throw new IllegalStateException("the sheet was put in before");
  }

  /** Puts an entry in the place of the one with the same values of the keys, or at the end. */
  private static void put(ArrayNode list, ObjectNode entry, List<String> keys) {
    for (int i = 0; i < list.size(); i++) {
      JsonNode there = list.get(i);
      if (keys.stream().allMatch(key -> entry.path(key).equals(there.path(key)))) {
        list.set(i, entry);
        return;
      }
    }
    list.add(entry);
  }
}
