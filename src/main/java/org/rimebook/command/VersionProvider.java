package org.rimebook.command;

import org.rimebook.season.Version;
import picocli.CommandLine.IVersionProvider;

/** Tells the version, for the whole program and for each of its commands. */
final class VersionProvider implements IVersionProvider {

  @Override
  public String[] getVersion() {
    return new String[] {"rimebook " + Version.number()};
  }
}
