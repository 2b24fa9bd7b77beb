package org.rimebook.architecture;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Calls, references to methods and uses of fields that a rule bans, as patterns of full names. */
record Accesses(Predicate<String> banned) {

  /** Any access whose full name, such as {@code java.lang.String.trim()}, fits one pattern. */
  static Accesses to(List<String> patterns) {
    return new Accesses(Pattern.compile(String.join("|", patterns)).asMatchPredicate());
  }

  /** The banned accesses of one class, in words with their place. */
  Stream<String> of(JavaClass type) {
    return type.getAccessesFromSelf().stream()
        .filter(access -> banned.test(access.getTarget().getFullName()))
        .map(JavaAccess::getDescription);
  }
}
