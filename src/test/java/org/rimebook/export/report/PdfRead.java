package org.rimebook.export.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.apache.pdfbox.text.PDFTextStripper;

/** Reads a report back. */
final class PdfRead implements AutoCloseable {

  final PDDocument document;

  PdfRead(byte[] bytes) throws IOException {
    document = Loader.loadPDF(bytes);
  }

  /** The text of some pages, counted from 1, with plain blanks. */
  String text(int fromPage, int toPage) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setSortByPosition(true);
    stripper.setStartPage(fromPage);
    stripper.setEndPage(toPage);
    stripper.setLineSeparator("\n");
    return stripper.getText(document).replace('\u00A0', ' ');
  }

  String text() throws IOException {
    return text(1, document.getNumberOfPages());
  }

  /** Titles of all bookmarks, those of the second level after two blanks. */
  List<String> bookmarks() {
    List<String> titles = new ArrayList<>();
    collect(document.getDocumentCatalog().getDocumentOutline(), "", titles);
    return titles;
  }

  private static void collect(PDOutlineNode node, String before, List<String> titles) {
    for (PDOutlineItem item : node.children()) {
      titles.add(before + item.getTitle());
      collect(item, before + "  ", titles);
    }
  }

  /** All elements of the structure, in order. */
  List<PDStructureElement> elements() {
    List<PDStructureElement> all = new ArrayList<>();
    walk(document.getDocumentCatalog().getStructureTreeRoot(), all::add);
    return all;
  }

  List<PDStructureElement> elements(String type) {
    return elements().stream().filter(e -> e.getStructureType().equals(type)).toList();
  }

  static void walk(PDStructureNode node, Consumer<PDStructureElement> visitor) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        visitor.accept(element);
        walk(element, visitor);
      }
    }
  }

  /** Resources of pages and of everything drawn on them. */
  List<PDResources> resources() throws IOException {
    List<PDResources> all = new ArrayList<>();
    for (PDPage page : document.getPages()) {
      add(page.getResources(), all);
    }
    return all;
  }

  private static void add(PDResources resources, List<PDResources> all) throws IOException {
    all.add(resources);
    for (COSName name : resources.getXObjectNames()) {
      PDXObject object = resources.getXObject(name);
      if (object instanceof PDFormXObject form && form.getResources() != null) {
        add(form.getResources(), all);
      }
    }
  }

  /** Everything drawn as a whole on pages. */
  List<PDXObject> drawn() throws IOException {
    List<PDXObject> all = new ArrayList<>();
    for (PDResources resources : resources()) {
      for (COSName name : resources.getXObjectNames()) {
        all.add(resources.getXObject(name));
      }
    }
    return all;
  }

  /** How often an operator stands in a form. */
  static long count(PDFormXObject form, String operator) throws IOException {
    return new PDFStreamParser(form)
        .parse().stream()
            .filter(token -> token instanceof Operator op && op.getName().equals(operator))
            .count();
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
