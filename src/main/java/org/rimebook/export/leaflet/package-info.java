/** Leaflets for those who look after the gauge: the same content for terminal, paper and window. */
package org.rimebook.export.leaflet;
