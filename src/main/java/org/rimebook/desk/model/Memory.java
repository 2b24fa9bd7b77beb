package org.rimebook.desk.model;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What the program remembers from one start to the next. To be used from the event thread. */
public interface Memory {

  /** How the window stood; {@link WindowState#UNKNOWN} at the first start. */
  WindowState window();

  /** Remembers how the window stands. */
  void window(WindowState state);

  /** Initials of whoever wrote last; empty when nobody did. */
  String initials();

  /** Remembers whoever wrote. */
  void initials(String writer);

  /** The seasons that were open, the latest first. */
  List<RecentSeason> recent();

  /** Remembers that a season was opened, or what it comes to. */
  void recent(RecentSeason season);

  /** Forgets a season, and how it was looked at. */
  void forget(Path folder);

  /** How a season was looked at; empty when it never was. */
  Optional<ViewState> view(Path folder);

  /** Remembers how a season is looked at. */
  void view(Path folder, ViewState state);

  /** Returns once what is to be remembered has been written, or couldn't be. */
  void flush();
}
