/** The bench: calibration and upkeep of the gauge, each task's form beside its paper. */
package org.rimebook.desk.bench;
