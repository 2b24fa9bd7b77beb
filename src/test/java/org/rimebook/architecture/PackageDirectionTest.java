package org.rimebook.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PackageDirectionTest {

  @Test
  void everyClassUsesOnlyPackagesBeforeItsOwn() {
    oneDirection(Layout.MAIN).check(Layout.MAIN.classes());
  }

  @Test
  void packagesAreFreeOfCycles() {
    noCycles(Layout.MAIN).check(Layout.MAIN.classes());
  }

  @Test
  void aUseAgainstTheDirectionIsFound() {
    assertThatThrownBy(() -> oneDirection(Layout.WRONG).check(Layout.WRONG.classes()))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("station.ReachesUp uses totals.ReachesBack")
        .hasMessageContaining("ledger.Unlisted is in no listed package")
        .hasMessageContaining("totals.ReachesBack uses the entry point")
        .hasMessageNotContaining("totals.ReachesBack uses station");
  }

  @Test
  void aCycleOfPackagesIsFound() {
    assertThatThrownBy(() -> noCycles(Layout.WRONG).check(Layout.WRONG.classes()))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("Cycle detected");
  }

  private static ArchRule oneDirection(Layout layout) {
    return classes()
        .should(
            new Condition(
                "use only packages before their own in " + Layout.ORDER,
                type -> faults(layout, type)))
        .because("a stage that can't see what follows it can be understood and tested alone");
  }

  private static ArchRule noCycles(Layout layout) {
    return slices().matching(layout.base() + ".(**)").should().beFreeOfCycles();
  }

  private static Stream<String> faults(Layout layout, JavaClass type) {
    if (layout.isEntryPoint(type)) {
      return Stream.empty();
    }
    if (layout.packageOf(type).isEmpty()) {
      return Stream.of(shortName(layout, type) + " is in no listed package");
    }
    int own = place(layout, type);
    return type.getDirectDependenciesFromSelf().stream()
        .map(Dependency::getTargetClass)
        .map(JavaClass::getBaseComponentType)
        .filter(layout::holds)
        .filter(used -> place(layout, used) > own)
        .map(used -> shortName(layout, type) + " uses " + shortName(layout, used));
  }

  /** Where a class stands in the order; the entry point and strangers stand after everything. */
  private static int place(Layout layout, JavaClass type) {
    return layout.packageOf(type).map(Layout.ORDER::indexOf).orElse(Integer.MAX_VALUE);
  }

  private static String shortName(Layout layout, JavaClass type) {
    return layout.isEntryPoint(type)
        ? "the entry point"
        : type.getFullName().substring(layout.base().length() + 1);
  }
}
