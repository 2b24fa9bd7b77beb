package org.rimebook.architecture.wrong.totals;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.formdev.flatlaf.FlatLaf;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.awt.Color;
import java.io.File;
import java.util.TimeZone;
import java.util.logging.Logger;
import javax.imageio.ImageWriter;
import javax.swing.JLabel;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jfree.chart.plot.XYPlot;
import picocli.CommandLine;

/** Stands outside every fence. */
public record UsesEveryLibrary(
    Color colour, File file, Logger logger, TimeZone zone, Libraries libraries) {

  /** The third-party part. */
  public record Libraries(
      JavaDoubleParser numbers,
      CsvReader<String> linesIn,
      CsvWriter linesOut,
      ObjectMapper json,
      StatUtils statistics,
      CommandLine command) {}

  /** What draws. */
  public record Drawing(XYPlot plot, FlatLaf theme, JLabel label) {}

  /** What writes drawings. */
  public record Files(ImageWriter pictures, PDDocument document, SVGGraphics2D lines) {}
}
