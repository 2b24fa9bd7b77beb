package org.rimebook.export.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.rimebook.export.figure.PdfBytes;
import org.rimebook.export.figure.SeasonFigure;
import org.rimebook.season.Decided;
import org.rimebook.season.SeasonDepths;
import org.rimebook.station.Progress;

/** What a report needs that can be done while the season is still being computed. */
public final class ReportAhead {

  private final CompletableFuture<List<Decided>> decided;

  private ReportAhead(CompletableFuture<List<Decided>> decided) {
    this.decided = decided;
  }

  /**
   * Begins to load what a report is drawn with, which takes most of the time of a program's first
   * report; a page is laid out and forgotten.
   */
  public static void getReady() {
    CompletableFuture.runAsync(ReportAhead::practise);
  }

  private static void practise() {
    try (PDDocument document = new PDDocument()) {
      Sheets sheets = new Sheets(document);
      Flow flow = new Flow(sheets, new Bookmarks(document));
      flow.heading1("Practice");
      flow.table(new Table.Builder().words("Word").figures("Figure").row("one", "1").done());
      flow.figure(SeasonFigure.blank(flow.width(), 100), "nothing", "nothing");
      sheets.finish("", "");
      PdfBytes.of(document, "");
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory can't fail", e);
    }
  }

  /**
   * Begins to look for what the notebook has decided.
   *
   * @param depths the season with its depths
   * @param progress may call it off
   */
  public static ReportAhead of(SeasonDepths depths, Progress progress) {
    return new ReportAhead(
        CompletableFuture.supplyAsync(() -> Decided.in(depths, new Silent(progress))));
  }

  /** What the notebook has decided, once it is known. */
  List<Decided> decided() {
    try {
      return decided.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof CancellationException calledOff) {
        throw calledOff;
      }
      throw e;
    }
  }

  /** Whether the whole is called off; what is heard comes from the report itself. */
  record Silent(Progress whole) implements Progress {

    @Override
    public void at(String stage, double share) {
      // Several threads would tell shares that jump.
    }

    @Override
    public boolean cancelled() {
      return whole.cancelled();
    }
  }
}
