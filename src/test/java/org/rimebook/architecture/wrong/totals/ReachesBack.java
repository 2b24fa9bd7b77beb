package org.rimebook.architecture.wrong.totals;

import org.rimebook.architecture.wrong.Rimebook;
import org.rimebook.architecture.wrong.station.ReachesUp;

/** Rightly uses a package before its own, which closes a cycle; wrongly uses the entry point. */
public record ReachesBack(ReachesUp earlier, Rimebook program) {}
