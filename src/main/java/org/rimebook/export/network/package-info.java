/**
 * The seasons of a network of gauges: found below a folder, made side by side within the memory
 * there is, left alone where nothing changed, and summed up in a table and a figure.
 */
package org.rimebook.export.network;
