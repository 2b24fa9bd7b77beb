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

  /** The folder for what can be made anew, on this machine; it needn't exist. */
  public static Path cache() {
    return cache(System.getProperties(), System.getenv());
  }

  /**
   * The folder: what {@value #PROPERTY} names; else on Linux {@code rimebook} in XDG_STATE_HOME, by
   * default ~/.local/state (XDG Base Directory Specification 0.8); else ~/.rimebook.
   */
  static Path of(Properties system, Map<String, String> environment) {
    return under(
        system, environment.getOrDefault("XDG_STATE_HOME", ""), Path.of(".local", "state"));
  }

  /** Like {@link #of}, in XDG_CACHE_HOME, by default ~/.cache. */
  static Path cache(Properties system, Map<String, String> environment) {
    return under(system, environment.getOrDefault("XDG_CACHE_HOME", ""), Path.of(".cache"));
  }

  private static Path under(Properties system, String given, Path usual) {
    String stated = system.getProperty(PROPERTY, "");
    if (!stated.isBlank()) {
      return Path.of(stated).toAbsolutePath();
    }
    Path home = Path.of(system.getProperty("user.home", ""));
    if (!system.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("linux")) {
      return home.resolve("." + NAME);
    }
    Path base = Path.of(given);
    // The specification has relative paths there ignored.
    return (base.isAbsolute() ? base : home.resolve(usual)).resolve(NAME);
  }
}
