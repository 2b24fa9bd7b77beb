package org.rimebook.command;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.rimebook.station.InputException;
import org.rimebook.totals.Resolution;

/** Makes the totals of a sample season, for a first look. */
final class SampleRun {

  private static final String SEASON = "hard-winter";

  private final Path season;
  private final Path out;

  SampleRun(Path samples, Path out) {
    this.season = samples.resolve(SEASON);
    this.out = out.resolve(SEASON);
  }

  boolean possible() {
    return Files.isDirectory(season);
  }

  int run(PrintWriter out, PrintWriter err) throws InputException {
    int code = new TotalsRun(season, this.out, Resolution.TENTH, true).run(out, err);
    if (code == ExitCode.DONE) {
      out.println();
      out.println("The season is an invented one; " + season.resolve("NOTE.md") + " tells of it.");
      out.println("To review it in the window: mvn -q -DskipTests package, then");
      out.println("  java -jar target/rimebook.jar open " + season);
      out.println("For a season of your own:");
      out.println("  java -jar target/rimebook.jar --help");
      out.flush();
    }
    return code;
  }
}
