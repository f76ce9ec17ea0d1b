package settle.sim.testhouses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import settle.sim.engine.HeldRun;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.study.Judgement;
import settle.sim.study.Remedies;
import settle.sim.study.Remedy;
import settle.sim.study.WarmUps;

/**
 * Over houses of every kind that are too cold: what is printed as sufficing, carried out as it is
 * printed, holds in weathers that nobody chose for it, by runs. More houses by the property {@code
 * remedies.houses}.
 */
class RemediesAgainstRunTest {

  private static final int HOUSES = Integer.getInteger("remedies.houses", 4);
  private static final int FEW = 1;

  /** Shares of the way from design weather to the mildest. */
  private static final double[] WEATHERS = {0, 0.31, 0.77};

  private static final WarmUps NOT_ASKED = new WarmUps(Optional.empty(), List.of());

  @Test
  void whatSufficesHoldsInOtherWeatherToo() {
    assertWhatSufficesHolds(0, FEW);
  }

  @Tag("thorough")
  @Test
  void soItDoesInMoreHouses() {
    assertWhatSufficesHolds(FEW, HOUSES);
  }

  /** Of the houses that are too cold, those from one to before another. */
  private static void assertWhatSufficesHolds(int from, int to) {
    int[] tried = new int[2];
    LongStream.iterate(1, seed -> seed + 1)
        .mapToObj(PlausibleHouse::of)
        .filter(drawn -> !Judgement.of(drawn.house(), drawn.arrangement()).holds())
        .skip(from)
        .limit(to - from)
        .forEach(
            drawn -> {
              House house = drawn.house();
              Arrangement as = drawn.arrangement();
              Judgement before = Judgement.of(house, as);
              Remedies remedies = Remedies.of(house, as, before, NOT_ASKED);
              for (Remedy remedy : remedies.sufficing()) {
                List<String> rooms = remedy.effects().stream().map(Remedy.Effect::room).toList();
                assertHolds(remedy.measure().on(house, as.name()), as.name(), rooms, remedy);
                tried[0]++;
              }
              remedies
                  .cure()
                  .ifPresent(
                      cure -> {
                        List<String> rooms =
                            before.rooms().stream().map(Judgement.Asked::name).toList();
                        assertHolds(cure.on(house, as.name()), as.name(), rooms, cure);
                        tried[1]++;
                      });
            });
    System.out.printf(
        "remedies that suffice: %d, least sets: %d, none failed%n", tried[0], tried[1]);
    assertThat(tried[0] + tried[1]).isPositive();
  }

  private static void assertHolds(House with, String name, List<String> rooms, Object what) {
    Arrangement as = with.arrangement(name);
    Judgement known = Judgement.of(with, as);
    double design = with.designOutdoor();
    double mildest = known.weathers().get(known.weathers().size() - 1).outdoor();
    for (double share : WEATHERS) {
      double outdoor = design + share * (mildest - design);
      double[] mean = HeldRun.of(with, as, outdoor).operative();
      List<String> cold =
          known.rooms().stream()
              .filter(room -> rooms.contains(room.name()) && mean[room.index()] < room.need())
              .map(Judgement.Asked::name)
              .toList();
      assertThat(cold).as("%s at %.1f °C: %s", what, outdoor, Arrays.toString(mean)).isEmpty();
    }
  }
}
