package org.rimebook.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import org.rimebook.export.OutputFolder;
import org.rimebook.export.leaflet.Leaflet;
import org.rimebook.export.leaflet.LeafletPdf;
import org.rimebook.export.leaflet.LeafletText;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** Where a leaflet goes: the terminal, and paper when asked for. */
final class LeafletOutput {

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--pdf",
      paramLabel = "FILE",
      description = "Also write it to be printed, into this file.")
  private Optional<Path> pdf;

  /** Prints and writes a leaflet. */
  int put(Leaflet leaflet) {
    return put(leaflet, leaflet);
  }

  /** Prints one leaflet and writes another. */
  int put(Leaflet leaflet, Leaflet onPaper) {
    PrintWriter out = spec.commandLine().getOut();
    LeafletText.lines(leaflet).forEach(out::println);
    out.flush();
    if (pdf.isEmpty()) {
      return ExitCode.DONE;
    }
    try {
      OutputFolder.write(pdf.get(), LeafletPdf.of(onPaper));
      out.println("written " + pdf.get());
      out.flush();
      return ExitCode.DONE;
    } catch (IOException e) {
      return notMade(pdf.get() + ": can't be written (" + e.getMessage() + "). Name another file");
    }
  }

  /** Says why something couldn't be made. */
  int notMade(String words) {
    spec.commandLine().getErr().println("rimebook: " + words);
    spec.commandLine().getErr().flush();
    return ExitCode.NOT_MADE;
  }
}
