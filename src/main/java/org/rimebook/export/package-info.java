/**
 * What leaves the program: the tables, the season's summary, and the description that makes them a
 * data package. Writes only into the folder it is given, whole files or none.
 */
package org.rimebook.export;
