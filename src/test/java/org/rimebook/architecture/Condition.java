package org.rimebook.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.function.Function;
import java.util.stream.Stream;

/** A condition on a class, from a function that says in words what is wrong with it. */
final class Condition extends ArchCondition<JavaClass> {

  private final Function<JavaClass, Stream<String>> faults;

  Condition(String description, Function<JavaClass, Stream<String>> faults) {
    super(description);
    this.faults = faults;
  }

  @Override
  public void check(JavaClass type, ConditionEvents events) {
    faults
        .apply(type)
        .distinct()
        .forEach(fault -> events.add(SimpleConditionEvent.violated(type, fault)));
  }
}
