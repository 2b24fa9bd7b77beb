package org.rimebook.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Test;

/** What the window does is tested without a screen only if it knows no component. */
class ViewModelTest {

  private static final ArchRule NO_COMPONENTS =
      noClasses()
          .that()
          .resideInAnyPackage("org.rimebook.desk.model..", "org.rimebook.desk.series..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.awt..", "javax.swing..", "org.jfree..", "com.formdev..");

  @Test
  void viewModelsKnowNoComponent() {
    NO_COMPONENTS.check(Layout.MAIN.classes());
  }

  @Test
  void onlyOneClassKnowsSwingsWorker() {
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("org.rimebook.desk.task.SwingTasks")
        .and()
        .resideOutsideOfPackage("org.rimebook.desk.task")
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("javax.swing.SwingWorker")
        .check(Layout.MAIN.classes());
  }
}
