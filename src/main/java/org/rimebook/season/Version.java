package org.rimebook.season;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** Version of the program: the same folder and the same version give the same bytes. */
public final class Version {

  private static final String NUMBER = read();

  private Version() {}

  /** The version number. */
  public static String number() {
    return NUMBER;
  }

  private static String read() {
    try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
      Properties properties = new Properties();
      properties.load(in);
      return properties.getProperty("version");
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own version can't be read", e);
    }
  }
}
