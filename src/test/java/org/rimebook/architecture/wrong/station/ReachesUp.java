package org.rimebook.architecture.wrong.station;

import org.rimebook.architecture.wrong.totals.ReachesBack;

/** Uses a package after its own. */
public record ReachesUp(ReachesBack[] later) {}
