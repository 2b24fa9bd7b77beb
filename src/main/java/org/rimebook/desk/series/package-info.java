/**
 * Series as they are drawn: views of a season's readings without copies, and what of them falls in
 * each pixel column. Knows no component.
 */
package org.rimebook.desk.series;
