package org.rimebook.export.network;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rimebook.export.OutputFolder;
import org.rimebook.export.figure.FigureFile;

/** The table and the figure of a network. */
public final class NetworkExport {

  /** Name of the table. */
  public static final String TABLE = "network.csv";

  /** Name of the figure. */
  public static final String FIGURE = "network.svg";

  private NetworkExport() {}

  /**
   * Writes both, each whole or not at all; the same bytes for the same rows.
   *
   * @param rows every season
   * @param folder where to write; made when absent
   * @throws IOException when the folder can't be written to
   */
  public static void write(List<NetworkRow> rows, Path folder) throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(TABLE, table(rows).getBytes(StandardCharsets.UTF_8));
    files.put(FIGURE, FigureFile.svg(NetworkFigure.of(rows)));
    OutputFolder.write(folder, files);
  }

  private static String table(List<NetworkRow> rows) {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
      csv.writeRecord(NetworkRow.columns());
      for (NetworkRow row : rows) {
        csv.writeRecord(row.fields());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory can't fail", e);
    }
    return text.toString();
  }
}
