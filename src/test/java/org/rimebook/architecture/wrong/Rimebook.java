package org.rimebook.architecture.wrong;

/** Stands for the entry point. */
public final class Rimebook {}
