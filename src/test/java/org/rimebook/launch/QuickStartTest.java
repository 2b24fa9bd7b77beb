package org.rimebook.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class QuickStartTest {

  private static final long LONGEST_S = 60;

  @TempDir private Path scratch;
  private Path program;
  private Path stored;
  private Path season;

  @BeforeEach
  void makesAProgramAndASeason() throws IOException {
    program = scratch.resolve("program.jar");
    stored = scratch.resolve("stored");
    season = scratch.resolve("season");
    Files.createDirectories(season.resolve("records"));
    Files.writeString(season.resolve("station.json"), "{}");
    try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(program))) {
      for (Class<?> type :
          List.of(
              QuickStart.class, SecondMachine.class, StoredClasses.class, StartedProgram.class)) {
        add(type, jar);
      }
    }
  }

  @Test
  void theFirstStartStoresTheClassesTheNextStartsWith() throws Exception {
    assertThat(run("0")).anyMatch(line -> line.contains("-XX:ArchiveClassesAtExit=" + stored));
    assertThat(names()).singleElement().asString().endsWith(".jsa");
    String classes = names().get(0);
    assertThat(run("0"))
        .anyMatch(line -> line.contains("-XX:SharedArchiveFile=" + stored.resolve(classes)));
    assertThat(names()).containsExactly(classes);
  }

  @Test
  void anotherProgramInThePlaceOfTheOldStoresItsClassesAnew() throws Exception {
    run("0");
    String before = names().get(0);
    try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(program))) {
      for (Class<?> type :
          List.of(
              QuickStartTest.class,
              QuickStart.class,
              SecondMachine.class,
              StoredClasses.class,
              StartedProgram.class)) {
        add(type, jar);
      }
    }
    run("0");
    assertThat(names()).singleElement().asString().isNotEqualTo(before).endsWith(".jsa");
  }

  @Test
  void anEndThatFailedIsPassedOnAndNothingKept() throws Exception {
    Process process = start(List.of(), "3");
    assertThat(ended(process)).isEqualTo(3);
    assertThat(names()).isEmpty();
  }

  @Test
  void theSecondMachineEndsWhenTheFirstIsKilled() throws Exception {
    Process process = start(List.of(), StartedProgram.WAIT);
    long second = Long.parseLong(lines(process).get(0));
    assertThat(second).isNotEqualTo(process.pid());
    Optional<ProcessHandle> machine = ProcessHandle.of(second);
    process.destroyForcibly();
    if (machine.isPresent()) {
      assertThat(machine.get().onExit().get(LONGEST_S, TimeUnit.SECONDS).isAlive()).isFalse();
    }
  }

  @Test
  void aSeasonOfCommonSizeIsOpenedWithTheQuickCompilerAlone() throws Exception {
    assertThat(run("0")).anyMatch(line -> line.contains("-XX:TieredStopAtLevel=1"));
    try (RandomAccessFile large =
        new RandomAccessFile(season.resolve("records").resolve("a.csv").toFile(), "rw")) {
      large.setLength(64_000_000);
    }
    assertThat(run("0"))
        .noneMatch(line -> line.contains("-XX:TieredStopAtLevel=1"))
        .anyMatch(line -> line.contains("-XX:CompileCommand=dontinline,org.rimebook.record."));
  }

  @Test
  void everyMethodThatIsCompiledApartIsThere() throws Exception {
    for (String method : QuickStart.COMPILED_APART) {
      String[] names = method.split("::");
      assertThat(Class.forName("org.rimebook.record." + names[0]).getDeclaredMethods())
          .extracting(Method::getName)
          .contains(names[1]);
    }
  }

  @Test
  void withoutAPlaceForTheClassesTheFirstMachineGoesOn() throws Exception {
    Files.writeString(stored, "a file");
    Process process = start(List.of(), "0");
    assertThat(lines(process).get(0)).isEqualTo(Long.toString(process.pid()));
  }

  @Test
  void whereThereIsNoSeasonTheFirstMachineGoesOn() throws Exception {
    Files.delete(season.resolve("station.json"));
    Process process = start(List.of(), "0");
    assertThat(lines(process).get(0)).isEqualTo(Long.toString(process.pid()));
  }

  @Test
  void whoeverWatchesTheMachineOrAsksForAPlainStartGetsTheFirst() throws Exception {
    for (String option : List.of("-Drimebook.start=plain", "-Xshare:auto")) {
      Process process = start(List.of(option), "0");
      assertThat(lines(process).get(0)).isEqualTo(Long.toString(process.pid()));
    }
  }

  private static void add(Class<?> type, JarOutputStream jar) throws IOException {
    String name = type.getName().replace('.', '/') + ".class";
    jar.putNextEntry(new JarEntry(name));
    try (InputStream in = type.getClassLoader().getResourceAsStream(name)) {
      assertThat(in).isNotNull();
      in.transferTo(jar);
    }
    jar.closeEntry();
  }

  private List<String> run(String end) throws Exception {
    Process process = start(List.of(), end);
    List<String> lines = lines(process);
    assertThat(ended(process)).isZero();
    return lines;
  }

  private Process start(List<String> options, String end) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(List.of("-cp", program.toString(), StartedProgram.class.getName()));
    command.addAll(List.of(stored.toString(), season.toString(), end));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    process.getOutputStream().close();
    return process;
  }

  /** What the program says until it has said all. */
  private static List<String> lines(Process process) throws IOException {
    List<String> lines = new ArrayList<>();
    BufferedReader reader = process.inputReader(StandardCharsets.UTF_8);
    String line = reader.readLine();
    while (line != null && !line.equals("whole")) {
      lines.add(line);
      line = reader.readLine();
    }
    assertThat(line).as("what it said: " + lines).isNotNull();
    return lines;
  }

  private static int ended(Process process) throws InterruptedException {
    assertThat(process.waitFor(LONGEST_S, TimeUnit.SECONDS)).isTrue();
    return process.exitValue();
  }

  private List<String> names() throws IOException {
    if (!Files.exists(stored)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(stored)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }
}
