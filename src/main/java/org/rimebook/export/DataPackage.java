package org.rimebook.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.rimebook.station.Sha256;
import org.rimebook.totals.Quality;

/** Describes the tables as a Frictionless Data Package (specification 1.0). */
final class DataPackage {

  private DataPackage() {}

  static String json(String stationName, Map<String, String> textByName, List<String> tables) {
    ObjectNode root = JsonLines.MAPPER.createObjectNode();
    root.put("profile", "tabular-data-package");
    root.put("name", slug(stationName));
    root.put("title", "Precipitation totals of " + stationName);
    ArrayNode resources = root.putArray("resources");
    for (String file : tables) {
      addTable(resources.addObject(), file, textByName.get(file));
    }
    return JsonLines.text(root);
  }

  /** The name of a package is lower-case ASCII letters, figures, '.', '_' and '-'. */
  static String slug(String name) {
    String ascii = Normalizer.normalize(name, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
    String slug =
        ascii.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9._-]+", "-").replaceAll("^-+|-+$", "");
    return slug.isEmpty() ? "season" : slug;
  }

  private static void addTable(ObjectNode resource, String file, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    resource.put("profile", "tabular-data-resource");
    resource.put("name", file.replace(".csv", ""));
    resource.put("path", file);
    resource.put("format", "csv");
    resource.put("mediatype", "text/csv");
    resource.put("encoding", "utf-8");
    resource.put("bytes", bytes.length);
    resource.put("hash", "sha256:" + Sha256.hex(bytes));
    resource.putObject("dialect").put("delimiter", ",").put("lineTerminator", "\n");
    ObjectNode schema = resource.putObject("schema");
    ArrayNode fields = schema.putArray("fields");
    for (TableColumn column : TableColumn.values()) {
      addField(fields.addObject(), column);
    }
    schema.putArray("missingValues").add("");
    schema.putArray("primaryKey").add(TableColumn.START.columnName());
  }

  private static void addField(ObjectNode field, TableColumn column) {
    field.put("name", column.columnName());
    field.put("type", column.type());
    field.put("description", column.meaning());
    if (column.type().equals("datetime")) {
      field.put("format", "%Y-%m-%dT%H:%M:%S%z");
    }
    if (column == TableColumn.QUALITY) {
      ArrayNode allowed = field.putObject("constraints").put("required", true).putArray("enum");
      Stream.of(Quality.values()).map(Quality::code).forEach(allowed::add);
    }
  }
}
