/** What is shown before a season is open: the start page, opening, faults, and a new season. */
package org.rimebook.desk.start;
