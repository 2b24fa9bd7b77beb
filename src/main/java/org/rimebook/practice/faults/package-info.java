/**
 * Simulated winters with faults that are known to the minute, and how well the checks find them.
 */
package org.rimebook.practice.faults;
