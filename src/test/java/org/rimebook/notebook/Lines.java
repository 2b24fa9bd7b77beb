package org.rimebook.notebook;

/** Lines of a notebook for tests. */
final class Lines {

  /** The notebook's name in notes. */
  static final String FILE = "notebook.jsonl";

  /** Two hours. */
  static final String SPAN =
      "\"from\": \"2025-01-15T10:00:00-07:00\", \"to\": \"2025-01-15T12:00:00-07:00\"";

  private Lines() {}

  /** An entry with the members every entry has, and more. */
  static String entry(String id, String kind, String... more) {
    String common =
        """
        {"id": "%s", "at": "2025-02-01T09:00:00-07:00", "by": "ab", "note": "as seen", "kind": "%s"\
        """
            .formatted(id, kind);
    return common + (more.length == 0 ? "" : ", " + String.join(", ", more)) + "}";
  }

  /** A withdrawal. */
  static String withdrawal(String id, String of) {
    return entry(id, Entry.Withdrawal.KIND, "\"entry\": \"" + of + "\"");
  }
}
