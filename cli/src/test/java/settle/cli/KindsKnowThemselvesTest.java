package settle.cli;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import settle.scenarios.emitter.EmitterType;
import settle.scenarios.source.SourceType;
import settle.scenarios.valve.ValveType;
import settle.sim.emitter.Emitter;
import settle.sim.hydraulics.Pump;
import settle.sim.source.Source;
import settle.sim.valve.Valve;

/**
 * A kind of emitter, valve, source or pump answers for itself: but for what reads it from a
 * scenario, nothing else knows which kinds there are, so that a further one is added without a
 * change elsewhere.
 */
@AnalyzeClasses(packages = "settle", importOptions = ImportOption.DoNotIncludeTests.class)
class KindsKnowThemselvesTest {

  /**
   * A valve held still for a step test and a pump for its flow; an ideal source to settle rooms
   * without a real one's limits.
   */
  private static final String MAKE_ONE =
      "settle\\.sim\\.(tuning\\.(Water|Controller)Start|study\\.SeasonAtRest)";

  @ArchTest static final ArchRule emitters = onlyItsPackageKnows(Emitter.class, EmitterType.class);

  @ArchTest static final ArchRule valves = onlyItsPackageKnows(Valve.class, ValveType.class);

  @ArchTest static final ArchRule sources = onlyItsPackageKnows(Source.class, SourceType.class);

  @ArchTest static final ArchRule pumps = onlyItsPackageKnows(Pump.class, "settle.scenarios.pipes");

  @ArchTest
  static final ArchRule emittersOfTheFormat =
      onlyItsPackageKnows(EmitterType.class, EmitterType.class);

  @ArchTest
  static final ArchRule valvesOfTheFormat = onlyItsPackageKnows(ValveType.class, ValveType.class);

  @ArchTest
  static final ArchRule sourcesOfTheFormat =
      onlyItsPackageKnows(SourceType.class, SourceType.class);

  /**
   * Where something follows from what a thing is, the thing gives it, or a fold of its cases does,
   * which the compiler checks for completeness. What the format writes of a type is the reader's.
   */
  @ArchTest
  static final ArchRule nothingOfTheSimulationIsAskedForItsType =
      classes()
          .that()
          .resideOutsideOfPackages("settle.scenarios.emitter", "settle.scenarios.source")
          .should(
              new ArchCondition<>("ask nothing of the simulation for its type") {
                @Override
                public void check(JavaClass asking, ConditionEvents events) {
                  asking.getInstanceofChecks().stream()
                      .filter(c -> c.getRawType().getPackageName().startsWith("settle.sim"))
                      .forEach(
                          c ->
                              events.add(
                                  SimpleConditionEvent.violated(
                                      c,
                                      c.getOwner().getFullName()
                                          + " asks for "
                                          + c.getRawType().getName())));
                }
              });

  private static ArchRule onlyItsPackageKnows(Class<?> kind, Class<?> reader) {
    return onlyItsPackageKnows(kind, reader.getPackageName());
  }

  private static ArchRule onlyItsPackageKnows(Class<?> kind, String reader) {
    return noClasses()
        .that()
        .resideOutsideOfPackages(kind.getPackageName(), reader)
        .and()
        .haveNameNotMatching(MAKE_ONE)
        .should()
        .dependOnClassesThat(
            describe(
                "are a kind of " + kind.getSimpleName(),
                (JavaClass c) -> c.isAssignableTo(kind) && !c.isEquivalentTo(kind)));
  }
}
