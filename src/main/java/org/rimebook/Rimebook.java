package org.rimebook;

/** Entry point. */
public final class Rimebook {

  private Rimebook() {}

  /** Runs one command. */
  public static void main(String[] arguments) {}
}
