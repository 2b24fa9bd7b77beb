package org.rimebook.record;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.rimebook.station.InputException;
import org.rimebook.station.Problem;
import org.rimebook.station.RecordLayout;

/** Settles how each file of a record is to be read, or says what is wrong with them. */
final class RecordPlanner {

  private final Wanted wanted;
  private final RecordLayout layout;
  private final Map<RecordFile, List<LogicalLine>> heads;
  private final Map<RecordFile, FilePlan> plans = new LinkedHashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  private RecordPlanner(
      Wanted wanted, RecordLayout layout, Map<RecordFile, List<LogicalLine>> heads) {
    this.wanted = wanted;
    this.layout = layout;
    this.heads = heads;
  }

  /**
   * Plans for the files that hold rows, by file; a file without a plan holds none.
   *
   * @param heads the first lines of each file, in the order of the files
   * @throws InputException naming every column that is absent or given twice, and every file whose
   *     dates can be read in two ways
   */
  static Map<RecordFile, FilePlan> plan(
      Wanted wanted, RecordLayout layout, Map<RecordFile, List<LogicalLine>> heads)
      throws IOException, InputException {
    RecordPlanner planner = new RecordPlanner(wanted, layout, heads);
    planner.dialects();
    planner.columns();
    planner.refuse();
    planner.settleOrders();
    planner.refuse();
    return planner.plans;
  }

  private void refuse() throws InputException {
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  private void dialects() {
    Map<RecordFile, Dialect> own = new LinkedHashMap<>();
    heads.forEach(
        (file, head) ->
            DialectFinder.find(head, wanted, layout).ifPresent(found -> own.put(file, found)));
    own.forEach(
        (file, dialect) -> {
          Optional<Problem> suspect = DelimiterSuspect.of(file, heads.get(file), wanted, layout);
          suspect.ifPresent(problems::add);
          if (dialect.headerLine() > 0) {
            enter(file, dialect, "");
          } else if (suspect.isEmpty()) {
            borrowHeader(file, dialect, own);
          }
        });
  }

  /** A file without a header is read under the one all files with as many fields agree on. */
  private void borrowHeader(RecordFile file, Dialect dialect, Map<RecordFile, Dialect> own) {
    List<RecordFile> lenders =
        own.entrySet().stream()
            .filter(e -> e.getValue().headerLine() > 0)
            .filter(e -> e.getValue().names().size() == dialect.fields())
            .map(Map.Entry::getKey)
            .toList();
    Set<List<String>> headers =
        lenders.stream().map(lender -> own.get(lender).names()).collect(Collectors.toSet());
    if (headers.size() == 1) {
      enter(file, dialect.under(headers.iterator().next()), lenders.get(0).name());
    } else {
      problems.add(
          Problem.inFile(
              file.name(),
              "no line of it names the column \"" + wanted.time() + "\"",
              "Put a line with the names of its columns at its top, or correct"
                  + " record.time_column and the wires' frequency_column in station.json"));
    }
  }

  private void enter(RecordFile file, Dialect dialect, String headerFrom) {
    plans.put(file, new FilePlan(file, dialect, headerFrom, form(file, dialect)));
  }

  private StampForm form(RecordFile file, Dialect dialect) {
    int time = ColumnMap.of(dialect.names(), wanted).time();
    List<String> stamps = new ArrayList<>();
    for (LogicalLine line : heads.get(file)) {
      if (time >= 0 && dialect.isRow(line)) {
        List<String> cells = Fields.split(line.text(), dialect.delimiter());
        if (cells.size() > time && !cells.get(time).isEmpty()) {
          stamps.add(cells.get(time));
        }
      }
    }
    String example = stamps.isEmpty() ? "" : stamps.get(0);
    return layout
        .timeFormat()
        .map(format -> StampForm.stated(format, example))
        .orElseGet(() -> StampForm.of(stamps));
  }

  private void columns() {
    for (FilePlan plan : plans.values()) {
      List<String> names = plan.dialect().names();
      if (plan.dialect().headerLine() > 0 && plan.dialect().fields() > names.size()) {
        problems.add(tooFewNames(plan));
      }
      if (ColumnNames.find(names, wanted.time()).isEmpty()) {
        problems.add(absent(plan, wanted.time(), "record.time_column"));
      }
      once(plan, wanted.time());
      wanted.values().forEach(column -> once(plan, column));
      shared(plan);
    }
    for (String column : wanted.values()) {
      List<FilePlan> without =
          plans.values().stream()
              .filter(plan -> ColumnNames.find(plan.dialect().names(), column).isEmpty())
              .toList();
      if (!plans.isEmpty() && without.size() == plans.size()) {
        problems.add(absent(without.get(0), column, "the name"));
      }
    }
  }

  private static Problem tooFewNames(FilePlan plan) {
    return new Problem(
        plan.file().name(),
        plan.dialect().headerLine(),
        0,
        "the header names "
            + plan.dialect().names().size()
            + " columns and the rows have "
            + plan.dialect().fields()
            + " fields",
        "Give every column a name in the header, in the order of the fields");
  }

  private static Problem absent(FilePlan plan, String column, String member) {
    List<String> names = plan.dialect().names();
    return new Problem(
        plan.file().name(),
        plan.dialect().headerLine(),
        0,
        "no column \"" + column + "\"; the nearest are " + ColumnNames.nearest(names, column),
        "Correct " + member + " in station.json, or the file's header");
  }

  private void once(FilePlan plan, String column) {
    List<Integer> found = ColumnNames.find(plan.dialect().names(), column);
    if (found.size() > 1) {
      String places =
          found.stream().map(index -> String.valueOf(index + 1)).collect(Collectors.joining(", "));
      problems.add(
          new Problem(
              plan.file().name(),
              plan.dialect().headerLine(),
              0,
              "the column \"" + column + "\" stands there more than once (fields " + places + ")",
              "Give each a name of its own in the header, and the one meant in station.json"));
    }
  }

  /** Names that differ in case or blanks only may find one column. */
  private void shared(FilePlan plan) {
    Map<Integer, String> columns = new HashMap<>();
    for (String name : wanted.values()) {
      for (int found : ColumnNames.find(plan.dialect().names(), name)) {
        String other = columns.putIfAbsent(found, name);
        if (other != null) {
          problems.add(
              new Problem(
                  plan.file().name(),
                  plan.dialect().headerLine(),
                  0,
                  "field "
                      + (found + 1)
                      + " is both \""
                      + other
                      + "\" and \""
                      + name
                      + "\" of station.json",
                  "Name each column once"));
        }
      }
    }
  }

  /** An order one file settles holds for the files of the same shape that leave it open. */
  private void settleOrders() throws IOException {
    Map<String, Set<DateOrder>> settled = new LinkedHashMap<>();
    Map<RecordFile, List<DateOrder>> open = new LinkedHashMap<>();
    for (FilePlan plan : List.copyOf(plans.values())) {
      StampForm form = plan.form();
      if (!form.isOpen()) {
        addSettled(settled, form);
        continue;
      }
      int time = ColumnMap.of(plan.dialect().names(), wanted).time();
      List<DateOrder> left = OrderSurvey.of(plan.file(), plan.dialect(), time, form);
      if (left.size() == 1) {
        settle(plan, left.get(0));
        addSettled(settled, form.settled(left.get(0)));
      } else {
        open.put(plan.file(), left);
      }
    }
    open.forEach((file, left) -> settleByOthers(plans.get(file), left, settled));
  }

  private static void addSettled(Map<String, Set<DateOrder>> settled, StampForm form) {
    if (form.kind() == StampForm.Kind.CIVIL && form.orders().size() == 1) {
      settled.computeIfAbsent(form.shape(), s -> new TreeSet<>()).add(form.orders().get(0));
    }
  }

  private void settle(FilePlan plan, DateOrder order) {
    StampForm form = plan.form().settled(order);
    plans.put(plan.file(), new FilePlan(plan.file(), plan.dialect(), plan.headerFrom(), form));
  }

  private void settleByOthers(
      FilePlan plan, List<DateOrder> left, Map<String, Set<DateOrder>> settled) {
    Set<DateOrder> others = settled.getOrDefault(plan.form().shape(), Set.of());
    Optional<DateOrder> agreed =
        others.size() == 1 ? others.stream().filter(left::contains).findFirst() : Optional.empty();
    if (agreed.isPresent()) {
      settle(plan, agreed.get());
    } else {
      problems.add(OpenDates.problem(plan, left));
    }
  }
}
