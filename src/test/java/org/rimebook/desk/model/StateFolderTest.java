package org.rimebook.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.api.Test;

class StateFolderTest {

  private static final Path HOME = Path.of("/home/ab");

  @Test
  void thePropertyOverridesAll() {
    Properties system = system("Linux");
    system.setProperty(StateFolder.PROPERTY, "/elsewhere");
    assertThat(StateFolder.of(system, Map.of("XDG_STATE_HOME", "/state")))
        .isEqualTo(Path.of("/elsewhere").toAbsolutePath());
  }

  @Test
  void linuxHasAFolderOfState() {
    assertThat(StateFolder.of(system("Linux"), Map.of("XDG_STATE_HOME", "/state")))
        .isEqualTo(Path.of("/state/rimebook"));
    assertThat(StateFolder.of(system("Linux"), Map.of()))
        .isEqualTo(HOME.resolve(".local/state/rimebook"));
  }

  @Test
  void aRelativeFolderOfStateIsPassedOver() {
    assertThat(StateFolder.of(system("Linux"), Map.of("XDG_STATE_HOME", "state")))
        .isEqualTo(HOME.resolve(".local/state/rimebook"));
  }

  @Test
  void elsewhereItStandsInTheHome() {
    assertThat(StateFolder.of(system("Windows 11"), Map.of("XDG_STATE_HOME", "/state")))
        .isEqualTo(HOME.resolve(".rimebook"));
  }

  @Test
  void whatCanBeMadeAnewHasAFolderOfItsOwn() {
    assertThat(StateFolder.cache(system("Linux"), Map.of("XDG_CACHE_HOME", "/cache")))
        .isEqualTo(Path.of("/cache/rimebook"));
    assertThat(StateFolder.cache(system("Linux"), Map.of()))
        .isEqualTo(HOME.resolve(".cache/rimebook"));
    Properties stated = system("Linux");
    stated.setProperty(StateFolder.PROPERTY, "/elsewhere");
    assertThat(StateFolder.cache(stated, Map.of())).isEqualTo(Path.of("/elsewhere"));
  }

  private static Properties system(String name) {
    Properties system = new Properties();
    system.setProperty("os.name", name);
    system.setProperty("user.home", HOME.toString());
    return system;
  }
}
