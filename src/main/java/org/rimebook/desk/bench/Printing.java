package org.rimebook.desk.bench;

import java.awt.print.PrinterJob;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;
import org.rimebook.desk.model.Faults;
import org.rimebook.desk.task.Tasks;
import org.rimebook.desk.task.Tasks.Lane;

/** Prints papers on the system's printers. */
final class Printing {

  /** What is said where there is no printer. */
  static final String NO_PRINTER =
      "No printer is set up on this computer: save the PDF and print it where there is one";

  private final Tasks tasks;
  private final Consumer<String> told;

  /**
   * @param tasks looks for printers and prints away from the event thread, which both can take long
   * @param told told what can't be done, and what is
   */
  Printing(Tasks tasks, Consumer<String> told) {
    this.tasks = tasks;
    this.told = told;
  }

  /** Asks for a printer and prints a paper on it. */
  void print(byte[] pdf, String title) {
    tasks.run(
        Lane.PRINT,
        "Looking for printers",
        progress -> {
          PrinterJob job = PrinterJob.getPrinterJob();
          return job.getPrintService() == null ? Optional.<PrinterJob>empty() : Optional.of(job);
        },
        job -> job.ifPresentOrElse(found -> ask(found, pdf, title), () -> told.accept(NO_PRINTER)),
        why -> told.accept("It can't be printed: " + Faults.words(why)));
  }

  private void ask(PrinterJob job, byte[] pdf, String title) {
    job.setJobName(title);
    if (!job.printDialog()) {
      return;
    }
    tasks.run(
        Lane.PRINT,
        "Printing",
        progress -> {
          try (PDDocument document = Loader.loadPDF(pdf)) {
            job.setPageable(new PDFPageable(document));
            job.print();
          } catch (IOException e) {
            throw new IllegalStateException("the paper can't be read", e);
          }
          return title;
        },
        printed -> told.accept("Sent to the printer: " + printed),
        why -> told.accept("It can't be printed: " + Faults.words(why)));
  }
}
