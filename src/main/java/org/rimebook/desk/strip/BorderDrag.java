package org.rimebook.desk.strip;

import java.awt.Point;
import org.rimebook.desk.look.Look;
import org.rimebook.desk.model.StripSetting;

/** Drags the border between a strip and the next: what one gains the other loses. */
final class BorderDrag implements StackNavigation.Drag {

  private final Strips strips;
  private final StripSetting above;
  private final StripSetting below;
  private final double shareAPixel;
  private final int fromY;

  /**
   * @param stack the stack
   * @param border number of the strip above it
   * @param fromY where the drag starts
   */
  BorderDrag(StripStack stack, int border, int fromY) {
    this.strips = stack.strips();
    this.above = stack.shown().get(border).setting();
    this.below = stack.shown().get(border + 1).setting();
    int heights = stack.layoutNow().strips().stream().mapToInt(r -> r.height).sum();
    this.shareAPixel = stack.shown().stream().mapToDouble(s -> s.setting().share()).sum() / heights;
    this.fromY = fromY;
  }

  @Override
  public void to(Point point) {
    double least = Look.px(28) * shareAPixel;
    double both = above.share() + below.share();
    double wanted = above.share() + (point.y - fromY) * shareAPixel;
    double share = Math.max(Math.min(least, both / 2), Math.min(both - least, wanted));
    strips.change(above.sharing(share));
    strips.change(below.sharing(both - share));
  }
}
