/**
 * Whether exported files follow from a season folder, byte for byte, and what changed where they
 * don't. Reads both and writes nothing.
 */
package org.rimebook.export.verify;
