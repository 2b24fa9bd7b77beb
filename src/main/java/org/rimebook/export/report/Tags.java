package org.rimebook.export.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** The structure of a document: which content is a heading, a paragraph, a cell of a table. */
final class Tags {

  private final PDStructureTreeRoot root = new PDStructureTreeRoot();
  private final PDStructureElement document;
  private final Map<PDPage, List<PDStructureElement>> marks = new LinkedHashMap<>();

  Tags(PDDocument pdf) {
    PDDocumentCatalog catalog = pdf.getDocumentCatalog();
    catalog.setStructureTreeRoot(root);
    PDMarkInfo info = new PDMarkInfo();
    info.setMarked(true);
    catalog.setMarkInfo(info);
    document = new PDStructureElement(StandardStructureTypes.DOCUMENT, root);
    root.appendKid(document);
  }

  /** The element that holds all others. */
  PDStructureElement document() {
    return document;
  }

  /** An element of a type at the end of another. */
  PDStructureElement add(PDStructureElement parent, String type) {
    PDStructureElement element = new PDStructureElement(type, parent);
    parent.appendKid(element);
    return element;
  }

  /** A mark for content of an element on a page; unique on the page. */
  int mark(PDPage page, PDStructureElement element) {
    List<PDStructureElement> own = marks.computeIfAbsent(page, p -> new ArrayList<>());
    int mark = own.size();
    own.add(element);
    if (element.getPage() == null) {
      element.setPage(page);
    }
    if (element.getPage().getCOSObject() == page.getCOSObject()) {
      element.appendKid(mark);
    } else {
      PDMarkedContentReference reference = new PDMarkedContentReference();
      reference.setPage(page);
      reference.setMCID(mark);
      element.appendKid(reference);
    }
    return mark;
  }

  /** Writes down, page by page, which element each mark belongs to. */
  void finish() throws IOException {
    Map<Integer, PDParentTreeValue> parents = new TreeMap<>();
    int key = 0;
    for (Map.Entry<PDPage, List<PDStructureElement>> page : marks.entrySet()) {
      COSArray elements = new COSArray();
      for (PDStructureElement element : page.getValue()) {
        elements.add(element.getCOSObject());
      }
      page.getKey().setStructParents(key);
      parents.put(key++, new PDParentTreeValue(elements));
    }
    PDNumberTreeNode tree = new PDNumberTreeNode(new COSDictionary(), PDParentTreeValue.class);
    tree.setNumbers(parents);
    root.setParentTree(tree);
    root.setParentTreeNextKey(key);
  }
}
