package settle.cli;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaCodeUnitAccess;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Formatter;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.StringJoiner;
import java.util.stream.Stream;

/**
 * What a step of a run may come to carry out: all that is called from it, where a method is
 * overridden every way of carrying it out. What ends the run by an exception is part of it, what
 * only that calls is not.
 */
final class StepReach {

  private static final String RUN = "settle.sim.engine.HouseRun";
  private static final Set<String> STAGES = Set.of("step", "record");

  private static final List<Class<?>> MAKERS =
      List.of(
          String.class,
          StringBuilder.class,
          StringBuffer.class,
          StringJoiner.class,
          Formatter.class,
          java.text.Format.class);

  private final JavaClasses classes;
  private final Set<JavaCodeUnit> reached = new LinkedHashSet<>();

  StepReach(JavaClasses classes) {
    this.classes = classes;
    Deque<JavaCodeUnit> open = new ArrayDeque<>();
    classes.get(RUN).getMethods().stream()
        .filter(m -> STAGES.contains(m.getName()))
        .forEach(open::push);
    while (!open.isEmpty()) {
      JavaCodeUnit unit = open.pop();
      if (!reached.add(unit)) {
        continue;
      }
      calls(unit).flatMap(call -> carriedOutBy(call.getTarget())).forEach(open::push);
    }
  }

  Set<JavaCodeUnit> codeUnits() {
    return reached;
  }

  /** Those that make text, whatever for. */
  List<JavaCodeUnit> makingText() {
    return reached.stream().filter(u -> calls(u).anyMatch(StepReach::makesText)).toList();
  }

  /** Those that make text, but end no run with it. */
  List<String> makingTextForNoException() {
    List<String> found = new ArrayList<>();
    for (JavaCodeUnit unit : makingText()) {
      if (!endsARun(unit)) {
        found.add(unit.getFullName());
      }
    }
    return found;
  }

  private static Stream<JavaCodeUnitAccess<?>> calls(JavaCodeUnit unit) {
    return Stream.concat(
        unit.getCallsFromSelf().stream(),
        Stream.concat(
            unit.getMethodReferencesFromSelf().stream(),
            unit.getConstructorReferencesFromSelf().stream()));
  }

  /** The method or constructor itself, and of a method all that override it. */
  private Stream<JavaCodeUnit> carriedOutBy(CodeUnitAccessTarget target) {
    JavaClass owner = target.getOwner();
    if (!owner.getPackageName().startsWith("settle.") || owner.isAssignableTo(Throwable.class)) {
      return Stream.empty();
    }
    List<String> parameters =
        target.getRawParameterTypes().stream().map(JavaClass::getName).toList();
    Stream<JavaCodeUnit> declared = target.resolveMember().stream().map(m -> (JavaCodeUnit) m);
    Stream<JavaCodeUnit> overriding =
        owner.getAllSubclasses().stream()
            .filter(c -> classes.contain(c.getName()))
            .flatMap(c -> c.getMethods().stream())
            .filter(m -> m.getName().equals(target.getName()))
            .filter(
                m ->
                    m.getRawParameterTypes().stream()
                        .map(JavaClass::getName)
                        .toList()
                        .equals(parameters))
            .map(m -> (JavaCodeUnit) m);
    return Stream.concat(declared, overriding);
  }

  /** Formatting, joining, turning into text: each is a call of one of these, or gives a String. */
  private static boolean makesText(JavaCodeUnitAccess<?> call) {
    JavaClass owner = call.getTargetOwner();
    if (MAKERS.stream().anyMatch(owner::isAssignableTo)) {
      return !Set.of("equals", "hashCode", "length", "isEmpty").contains(call.getName());
    }
    return call.getName().equals("toString")
        || (owner.getPackageName().startsWith("java.")
            && call.getTarget().getRawReturnType().isEquivalentTo(String.class));
  }

  /** Whether a code unit makes an exception, or is given one to throw. */
  private static boolean endsARun(JavaCodeUnit unit) {
    return unit.getRawReturnType().isAssignableTo(Throwable.class)
        || calls(unit)
            .anyMatch(
                c ->
                    c.getTargetOwner().isAssignableTo(Throwable.class)
                        || c.getTarget().getRawReturnType().isAssignableTo(Throwable.class));
  }
}
