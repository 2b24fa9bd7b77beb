package org.rimebook.desk.model;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;

/** Where the program keeps what it remembers for its user. */
public final class StateFolder {

  /** System property that names another folder. */
  public static final String PROPERTY = "rimebook.state";

  private static final String NAME = "rimebook";

  private StateFolder() {}

  /** The folder on this machine; it needn't exist. */
  public static Path here() {
    return of(System.getProperties(), System.getenv());
  }

  /**
   * The folder: what {@value #PROPERTY} names; else on Linux {@code rimebook} in XDG_STATE_HOME, by
   * default ~/.local/state (XDG Base Directory Specification 0.8); else ~/.rimebook.
   */
  static Path of(Properties system, Map<String, String> environment) {
    String stated = system.getProperty(PROPERTY, "");
    if (!stated.isBlank()) {
      return Path.of(stated).toAbsolutePath();
    }
    Path home = Path.of(system.getProperty("user.home", ""));
    if (!system.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("linux")) {
      return home.resolve("." + NAME);
    }
    Path state = Path.of(environment.getOrDefault("XDG_STATE_HOME", ""));
    // The specification has relative paths there ignored.
    return (state.isAbsolute() ? state : home.resolve(Path.of(".local", "state"))).resolve(NAME);
  }
}
