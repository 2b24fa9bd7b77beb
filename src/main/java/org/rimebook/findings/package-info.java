/**
 * What looks wrong in a season, why, and the notebook entry that would settle it. Each check is a
 * class of its own, a pure function of what it looks at; none changes a total or writes an entry.
 */
package org.rimebook.findings;
