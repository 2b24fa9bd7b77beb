package org.rimebook.export.network;

import java.nio.file.Path;

/**
 * A season folder of a network.
 *
 * @param name its path below the network's folder, with {@code /} between names
 * @param folder the folder
 */
public record SeasonFolder(String name, Path folder) {

  /** Where its tables go, below the folder for the whole network. */
  public Path tables(Path out) {
    return out.resolve(name);
  }
}
