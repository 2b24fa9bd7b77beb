package org.rimebook.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.rimebook.record.RecordPreview;
import org.rimebook.season.Season;
import org.rimebook.season.SheetDraft;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Drafts a station sheet for a folder of logger files. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    versionProvider = VersionProvider.class,
    description = "Draft a station sheet from the header of the logger files in a folder.",
    footerHeading = "%nExample:%n",
    footer = {
      "  rimebook new my-gauge-2024-25",
      "      with the logger files in my-gauge-2024-25/records"
    })
final class NewCommand implements Callable<Integer> {

  @Parameters(paramLabel = "FOLDER", description = "Folder that holds records/.")
  private Path folder;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws InputException {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    Path sheet = folder.resolve(Season.STATION_FILE);
    if (Files.exists(sheet)) {
      err.println(
          "rimebook: "
              + sheet
              + " is there already and was left as it is. Rename it to have one drafted anew");
      err.flush();
      return ExitCode.WRONG_USE;
    }
    Path name = folder.toAbsolutePath().normalize().getFileName();
    SheetDraft draft = SheetDraft.of(preview(), name == null ? "My gauge" : name.toString());
    try {
      writeWhole(sheet, draft.text());
    } catch (FileAlreadyExistsException e) {
      err.println("rimebook: " + sheet + " came to be meanwhile and was left as it is");
      err.flush();
      return ExitCode.NOT_MADE;
    } catch (IOException e) {
      err.println(
          "rimebook: "
              + sheet
              + " can't be written ("
              + e.getMessage()
              + "). Check that you may write there; nothing was left half-written");
      err.flush();
      return ExitCode.NOT_MADE;
    }
    out.println("Drafted " + sheet);
    out.println("Taken from the logger files, please check:");
    draft.guessed().forEach(line -> out.println("  " + line));
    out.println("Left to enter, marked null in the sheet:");
    draft.toEnter().forEach(line -> out.println("  " + line));
    out.println("Then: rimebook inspect " + folder);
    out.flush();
    return ExitCode.DONE;
  }

  /** Writes a sheet whole or not at all; one that is there is never replaced. */
  private static void writeWhole(Path sheet, String text) throws IOException {
    Path part = sheet.resolveSibling("." + sheet.getFileName() + ".part");
    try {
      Files.writeString(part, text, StandardCharsets.UTF_8);
      Files.move(part, sheet);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  private RecordPreview preview() throws InputException {
    try {
      if (!Files.isDirectory(folder)) {
        throw new InputException(
            Problem.inFile(
                folder.toString(), "isn't a folder", "Make it, with the logger files in records/"));
      }
      return RecordPreview.of(folder);
    } catch (IOException e) {
      throw new InputException(
          Problem.inFile(
              folder.toString(),
              "can't be read (" + e.getMessage() + ")",
              "Check that you may read it"));
    }
  }
}
