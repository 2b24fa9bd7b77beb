package org.rimebook.desk.look;

import com.formdev.flatlaf.extras.FlatSVGUtils;
import java.awt.Image;
import java.util.List;

/** The program's own drawings. */
public final class Icons {

  private Icons() {}

  /** The window's icon in the sizes a system asks for. */
  public static List<Image> window() {
    return FlatSVGUtils.createWindowIconImages("/org/rimebook/desk/look/rimebook.svg");
  }
}
