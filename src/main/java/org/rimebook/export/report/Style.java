package org.rimebook.export.report;

import org.rimebook.export.figure.Typeface;

/**
 * How text is set.
 *
 * @param face the typeface
 * @param sizePt its size [pt]
 * @param leadingPt from one line to the next [pt]
 */
record Style(Typeface face, double sizePt, double leadingPt) {

  static final Style TITLE = new Style(Typeface.MEDIUM, 17, 21);
  static final Style ANSWER = new Style(Typeface.MEDIUM, 25, 30);
  static final Style HEADING_1 = new Style(Typeface.MEDIUM, 13, 17);
  static final Style HEADING_2 = new Style(Typeface.MEDIUM, 10, 13.5);
  static final Style BODY = new Style(Typeface.REGULAR, 9, 12.5);
  static final Style STRONG = new Style(Typeface.MEDIUM, 9, 12.5);
  static final Style CELL = new Style(Typeface.REGULAR, 8, 10.5);
  static final Style CELL_STRONG = new Style(Typeface.MEDIUM, 8, 10.5);
  static final Style SMALL = new Style(Typeface.REGULAR, 7.5, 10);
  static final Style TINY = new Style(Typeface.REGULAR, 6.5, 8.6);
  static final Style TINY_STRONG = new Style(Typeface.MEDIUM, 6.5, 8.6);

  /** From the top of a line to its baseline [pt]. */
  double ascentPt() {
    return 0.5 * (leadingPt - sizePt) + 0.78 * sizePt;
  }
}
