package settle.sim.validation;

import java.util.List;
import settle.sim.house.House;
import settle.sim.house.Spreads;
import settle.sim.study.LimitedRoom;
import settle.sim.study.Odds;
import settle.sim.study.Workers;

/**
 * Odds of a room that follows what is uncertain in closed form, against the normal distribution.
 */
final class OddsRows implements RowGroup {

  private static final int SAMPLES = 1024;
  private static final long SEED = 20;

  /** Each of the eight shifted copies of 128 points has one point in each 128th of the range. */
  private static final Tolerance ONE_POINT =
      Tolerance.absolute(1 / 128.0, "one of a copy's 128 points");

  @Override
  public String title() {
    return "Odds of keeping up";
  }

  @Override
  public boolean takesDays() {
    return true;
  }

  @Override
  public List<Row> rows() {
    return List.of(
        row("coldest weather within 1.5 K", "P(T_e > -4.5 C) = Phi(1)")
            .expects(0.84134, "1", ONE_POINT)
            .codeGives(() -> keepsUp(new Spreads(0, 0, 0, 0, 0, 1.5))),
        row("want within 2 K", "P(want < 22.5 C) = Phi(0.75)")
            .expects(0.77337, "1", ONE_POINT)
            .codeGives(() -> keepsUp(new Spreads(0, 0, 0, 0, 2, 0))),
        row("U-values within 15 %", "P(f < 25/23.5) = Phi(ln(25/23.5)/0.14917)")
            .expects(0.66086, "1", ONE_POINT)
            .codeGives(() -> keepsUp(new Spreads(0.15, 0, 0, 0, 0, 0))),
        row("coldest weather within 1.5 K, want within 2 K", "sum of both: Phi(1.5/2.5)")
            .expects(
                0.72575,
                "1",
                Tolerance.absolute(0.01, "below 0.014, the standard error of as many random draws"))
            .codeGives(() -> keepsUp(new Spreads(0, 0, 0, 0, 2, 1.5))));
  }

  private static Row.Draft row(String uncertain, String how) {
    return Row.claim("Share of houses that keep up")
        .source(Source.NORMAL, how)
        .kind(Kind.ANALYTIC)
        .given("22 C where 20.5 C suffices, " + uncertain);
  }

  private static double keepsUp(Spreads spreads) {
    House house = LimitedRoom.house(spreads);
    return Odds.of(house, house.arrangements().get(0), SAMPLES, SEED, Workers.ONE, done -> {})
        .estimate()
        .keepUp();
  }
}
