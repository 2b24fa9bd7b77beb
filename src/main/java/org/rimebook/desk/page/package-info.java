/**
 * Marking: the lane of entries above the strips, the gesture and the bar that make them, and the
 * page on which the notebook is read. What they do is decided in {@code desk.model}.
 */
package org.rimebook.desk.page;
