package org.rimebook.architecture.wrong.ledger;

/** Stands in a package that the order doesn't list. */
public final class Unlisted {}
