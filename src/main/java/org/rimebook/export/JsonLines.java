package org.rimebook.export;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** JSON text that is the same on every machine: two blanks an indent, LF line ends. */
final class JsonLines {

  /**
   * Writes numbers the same on every Java version, as {@link org.rimebook.station.JsonText} does.
   */
  static final ObjectMapper MAPPER =
      JsonMapper.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();

  private static final ObjectWriter WRITER = MAPPER.writer(printer());

  private JsonLines() {}

  private static DefaultPrettyPrinter printer() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    return new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
  }

  static String text(ObjectNode node) {
    try {
      return WRITER.writeValueAsString(node) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values can always be written", e);
    }
  }
}
