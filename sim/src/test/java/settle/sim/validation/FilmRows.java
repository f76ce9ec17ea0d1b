package settle.sim.validation;

import java.util.List;
import settle.sim.emitter.EmitterStepper;
import settle.sim.emitter.PerimeterEmitter;
import settle.sim.emitter.TubeFilm;
import settle.sim.emitter.Tubes;

/** Film in the tubes of skirting, and water that goes out and back in one face. */
final class FilmRows implements RowGroup {

  private static final double GALLON_PER_MINUTE = 3.785e-3 / 60;

  @Override
  public String title() {
    return "Film in a tube, out and back";
  }

  @Override
  public List<Row> rows() {
    return List.of(
        Row.claim("Gain of a baseboard from four times the flow")
            .source(Source.BASEBOARD, "output as the flow to the power 0.04")
            .kind(Kind.MEMORY)
            .bearingOn(MainResult.SETTLED_OUTPUT)
            .given("bore 20.2 mm, 557 W/m, 1 and 4 US gallons a minute, mean water 82 C")
            .expectsBetween(
                1.03, 1.09, "1", "4^0.04 = 1.057; a correction of one digit for tubes with fins")
            .codeGives(() -> baseboard(4) / baseboard(1)),
        Row.claim("Nusselt number of laminar flow in a heated tube")
            .source(Source.MORCOS, "natural convection in horizontal tubes")
            .kind(Kind.MEMORY)
            .bearingOn(MainResult.SETTLED_OUTPUT)
            .given("bore 14 mm, water at 40 C, wall 1.5 K cooler")
            .expectsBetween(7, 14, "1", "of the order of two to three times 4.36")
            .codeGives(() -> TubeFilm.laminar(TubeFilm.rayleigh(0.014, 40, 1.5))),
        outAndBack(1, 535.75, "535.75"),
        outAndBack(0.3, 324.32, "324.32"));
  }

  private static Row outAndBack(double litresPerMinute, double heat, String printed) {
    return Row.claim("Output of skirting out and back")
        .source(Source.TWO_TUBES, "from the far end by Runge and Kutta, 200 steps")
        .kind(Kind.COMPUTED)
        .given(
            "8 m of 130 W/m, n 1.3, two tubes of 14 mm, web 5 W/(m K), 55 C in 20 C, "
                + litresPerMinute
                + " l/min")
        .expects(heat, printed, "W", Tolerance.relative(0.001, "cells of finite length"))
        .codeGives(
            () ->
                stepper(8, 130, 0.014, Tubes.Way.OUT_AND_BACK)
                    .atRest(litresPerMinute / 60 * 0.988 * 4180, 55, 20));
  }

  /** Output [W] of 3 m at a flow in US gallons a minute, by the mean of inlet and outlet. */
  private static double baseboard(double flow) {
    double capacityFlow = flow * GALLON_PER_MINUTE * 970 * 4195;
    EmitterStepper stepper = stepper(3, 404, 0.0202, Tubes.Way.ONE_WAY);
    double heat = 0;
    for (int i = 0; i < 30; i++) {
      heat = stepper.atRest(capacityFlow, 82.2 + heat / (2 * capacityFlow), 18.3);
    }
    return heat;
  }

  private static EmitterStepper stepper(
      double length, double perMetre, double bore, Tubes.Way way) {
    PerimeterEmitter emitter =
        new PerimeterEmitter(
            "skirting",
            length,
            perMetre,
            1.3,
            way.legs() * Math.PI / 4 * bore * bore,
            1125,
            0.3,
            0,
            List.of(),
            new Tubes(way, bore, true, 5),
            new PerimeterEmitter.Face(0.14, 0.03, 0.04, 0.1));
    return emitter.stepper(emitter.waterVolume() * 988 * 4180 + emitter.metalCapacity(), 20, 1);
  }
}
