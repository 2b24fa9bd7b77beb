/** Reads daily tables of other stations, and writes what comparing with them gives. */
package org.rimebook.export.neighbour;
