package org.rimebook.launch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The command that starts this program once more, with further options of the virtual machine. */
final class SecondMachine {

  /** What sets a machine up for watching or sharing can't be had twice, or is already chosen. */
  private static final List<String> NOT_TWICE =
      List.of(
          "-agent",
          "-javaagent",
          "-Xrun",
          "-Xshare",
          "-XX:SharedArchiveFile",
          "-XX:ArchiveClassesAtExit");

  private SecondMachine() {}

  /**
   * The command: that of this program with the options before its own, which win.
   *
   * @param info the process of this program
   * @param fromOutside options the virtual machine takes from its environment besides; may be empty
   * @param options further options
   * @return empty where the system doesn't tell how it was started, or it can't be done twice
   */
  static Optional<List<String>> command(
      ProcessHandle.Info info, String fromOutside, List<String> options) {
    Optional<String> java = info.command();
    Optional<String[]> arguments = info.arguments();
    if (java.isEmpty() || arguments.isEmpty() || fromOutside.contains("agent")) {
      return Optional.empty();
    }
    List<String> command = new ArrayList<>();
    command.add(java.get());
    command.addAll(options);
    for (String argument : arguments.get()) {
      if (NOT_TWICE.stream().anyMatch(argument::startsWith)) {
        return Optional.empty();
      }
      command.add(argument);
    }
    return Optional.of(command);
  }
}
