package org.rimebook.export.standard;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** XML in memory, an element a line, with namespaces by the prefix in front of a name. */
final class Xml {

  private static final String STEP = "  ";

  private final StringWriter text = new StringWriter();
  private final XMLStreamWriter writer;
  private int depth;

  Xml() {
    try {
      writer = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
      writer.writeStartDocument("UTF-8", "1.0");
    } catch (XMLStreamException e) {
      throw unwritten(e);
    }
  }

  /**
   * Opens an element.
   *
   * @param name its name with its prefix
   * @param attributes names with their prefixes and values, in turn
   */
  Xml open(String name, String... attributes) {
    try {
      line();
      writer.writeStartElement(name);
      attributes(attributes);
      depth++;
      return this;
    } catch (XMLStreamException e) {
      throw unwritten(e);
    }
  }

  /** Closes the element opened last. */
  Xml close() {
    try {
      depth--;
      line();
      writer.writeEndElement();
      return this;
    } catch (XMLStreamException e) {
      throw unwritten(e);
    }
  }

  /** An element without content. */
  Xml empty(String name, String... attributes) {
    try {
      line();
      writer.writeEmptyElement(name);
      attributes(attributes);
      return this;
    } catch (XMLStreamException e) {
      throw unwritten(e);
    }
  }

  /** An element with words in it; what XML can't hold becomes U+FFFD. */
  Xml words(String name, String words) {
    try {
      line();
      writer.writeStartElement(name);
      writer.writeCharacters(clean(words));
      writer.writeEndElement();
      return this;
    } catch (XMLStreamException e) {
      throw unwritten(e);
    }
  }

  private void attributes(String... attributes) throws XMLStreamException {
    for (int i = 0; i < attributes.length; i += 2) {
      writer.writeAttribute(attributes[i], clean(attributes[i + 1]));
    }
  }

  private void line() throws XMLStreamException {
    writer.writeCharacters("\n" + STEP.repeat(depth));
  }

  /** The characters of XML 1.0 (production 2). */
  private static String clean(String text) {
    StringBuilder clean = new StringBuilder();
    text.codePoints().map(c -> allowed(c) ? c : 0xFFFD).forEach(clean::appendCodePoint);
    return clean.toString();
  }

  private static boolean allowed(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || (c >= 0x20 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= 0x10000;
  }

  /** The document in UTF-8. */
  byte[] bytes() {
    try {
      writer.writeEndDocument();
      writer.writeCharacters("\n");
      writer.flush();
      return text.toString().getBytes(StandardCharsets.UTF_8);
    } catch (XMLStreamException e) {
      throw unwritten(e);
    }
  }

  private static IllegalStateException unwritten(XMLStreamException e) {
    return new IllegalStateException("writing to memory can't fail", e);
  }
}
