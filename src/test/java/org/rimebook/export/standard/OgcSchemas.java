package org.rimebook.export.standard;

import java.io.InputStream;
import java.io.Reader;
import java.net.URI;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.w3c.dom.ls.LSInput;
import org.w3c.dom.ls.LSResourceResolver;
import org.xml.sax.SAXException;

/** The published schemas of the OGC, ISO and W3C, out of libraries and never from the network. */
final class OgcSchemas {

  private static final String OGC = "http://schemas.opengis.net/";
  private static final String W3C = "http://www.w3.org/";
  private static final String WATERML = OGC + "waterml/2.0/waterml2.xsd";

  private OgcSchemas() {}

  /** WaterML 2.0.2 as published. */
  static Schema waterMl2() throws SAXException {
    SchemaFactory factory = SchemaFactory.newDefaultInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, false); // hundreds of imports
    factory.setResourceResolver(new Library());
    return factory.newSchema(new StreamSource(stream(WATERML), WATERML));
  }

  private static InputStream stream(String address) {
    String path =
        address.startsWith(OGC)
            ? "/ogc/" + address.substring(OGC.length())
            : "/w3c/" + address.substring(W3C.length());
    InputStream in = OgcSchemas.class.getResourceAsStream(path);
    if (in == null) {
      throw new AssertionError("no schema " + address + " in the libraries");
    }
    return in;
  }

  private static final class Library implements LSResourceResolver {

    @Override
    public LSInput resolveResource(
        String type, String namespace, String publicId, String systemId, String base) {
      String address = URI.create(base).resolve(systemId).toString();
      return new Input(address);
    }
  }

  /** A schema by its address. */
  private record Input(String address) implements LSInput {

    @Override
    public InputStream getByteStream() {
      return stream(address);
    }

    @Override
    public String getSystemId() {
      return address;
    }

    @Override
    public Reader getCharacterStream() {
      return null;
    }

    @Override
    public String getStringData() {
      return null;
    }

    @Override
    public String getPublicId() {
      return null;
    }

    @Override
    public String getBaseURI() {
      return address;
    }

    @Override
    public String getEncoding() {
      return null;
    }

    @Override
    public boolean getCertifiedText() {
      return false;
    }

    @Override
    public void setCharacterStream(Reader stream) {}

    @Override
    public void setByteStream(InputStream stream) {}

    @Override
    public void setStringData(String data) {}

    @Override
    public void setSystemId(String id) {}

    @Override
    public void setPublicId(String id) {}

    @Override
    public void setBaseURI(String uri) {}

    @Override
    public void setEncoding(String encoding) {}

    @Override
    public void setCertifiedText(boolean certified) {}
  }
}
