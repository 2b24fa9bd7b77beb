package org.rimebook.station;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Members of one JSON object about to be written, joined with those of an earlier text. */
final class JsonMembers {

  private final Map<String, Object> members = new LinkedHashMap<>();
  private final Set<String> known = new HashSet<>();

  /** Adds a member; null is written as null. */
  void put(String name, Object value) {
    known.add(name);
    members.put(name, value);
  }

  /** Adds a member when there is a value. */
  void put(String name, Optional<String> value) {
    known.add(name);
    value.ifPresent(text -> members.put(name, text));
  }

  /** Adds a member when there is a value. */
  void put(String name, OptionalDouble value) {
    known.add(name);
    value.ifPresent(number -> members.put(name, number));
  }

  /** The members, followed by those of the earlier object that have no name put here. */
  Map<String, Object> with(Map<?, ?> earlier) {
    Map<String, Object> all = new LinkedHashMap<>(members);
    for (Map.Entry<?, ?> member : earlier.entrySet()) {
      if (!known.contains(member.getKey())) {
        all.put(String.valueOf(member.getKey()), member.getValue());
      }
    }
    return all;
  }

  /** The object under a name; an empty one when there is none. */
  static Map<?, ?> objectIn(Map<?, ?> object, String name) {
    return object.get(name) instanceof Map<?, ?> inner ? inner : Map.of();
  }

  /** The items of the list under a name; an empty object stands in for one that isn't an object. */
  static List<Map<?, ?>> objectsIn(Map<?, ?> object, String name) {
    List<Map<?, ?>> objects = new ArrayList<>();
    if (object.get(name) instanceof List<?> list) {
      list.forEach(item -> objects.add(item instanceof Map<?, ?> inner ? inner : Map.of()));
    }
    return objects;
  }

  /** The first object whose member has a value; an empty one when none has. */
  static Map<?, ?> first(List<Map<?, ?>> objects, String name, String value) {
    return objects.stream()
        .filter(object -> value.equals(object.get(name)))
        .findFirst()
        .orElse(Map.of());
  }
}
