package settle.scenarios.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import settle.scenarios.control.ControlSection;
import settle.scenarios.format.Form;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.ClockText;
import settle.scenarios.quantity.Dimension;
import settle.sim.control.Timetable;
import settle.sim.units.Times;

/** Reads time programmes: that of the house, that of a room, and the hours of gains. */
public final class Programmes {

  private static final int DAYS = 7;
  private static final int WORKING_DAYS = 5;
  private static final Form.Quantity WANT = (Form.Quantity) RoomKeys.WANT.form();

  private final Section control;
  private boolean any;

  /**
   * The house's setback temperature, read when the first room needs it: else it would be listed as
   * a default used.
   */
  private double houseSetback = Double.NaN;

  public Programmes(Section control) {
    this.control = control;
  }

  /** Whether any room read so far has a programme. */
  public boolean any() {
    return any;
  }

  /** A period with its value [s since midnight; end above start, perhaps after midnight]. */
  private record Period(double start, double end, double value) {}

  /**
   * A room's want over time.
   *
   * @param room the room's section
   * @param want its want-temperature [°C]
   */
  Timetable want(Section room, double want) {
    Optional<Value> programme = room.value(RoomKeys.PROGRAMME);
    if (programme.isEmpty()) {
      programme = control.value(ControlSection.PROGRAMME);
    }
    if (programme.isEmpty()) {
      room.value(RoomKeys.SETBACK).ifPresent(v -> v.warn("has no effect without a programme"));
      return Timetable.constant(want);
    }
    any = true;
    double setback = room.has(RoomKeys.SETBACK) ? room.number(RoomKeys.SETBACK) : houseSetback();
    if (setback > want) {
      room.warn(
          "the set-back, "
              + Dimension.TEMPERATURE.show(setback)
              + ", is warmer than want, "
              + Dimension.TEMPERATURE.show(want));
    }
    return timetable(programme.get(), want, setback);
  }

  /** Above 0 in the periods in which hot water takes the source away. */
  public Timetable hotWater() {
    if (!control.has(ControlSection.HOT_WATER)) {
      control.note(ControlSection.HOT_WATER, "none");
      return Timetable.constant(0);
    }
    return steps(periods(control.several(ControlSection.HOT_WATER), 1), 0, Times.DAY);
  }

  private double houseSetback() {
    if (Double.isNaN(houseSetback)) {
      houseSetback = control.number(ControlSection.SETBACK);
    }
    return houseSetback;
  }

  private static Timetable timetable(Value programme, double want, double setback) {
    if (programme.hasKey(RoomKeys.WEEKDAYS) || programme.hasKey(RoomKeys.WEEKEND)) {
      Section week = programme.section(RoomKeys.WEEK_TABLE);
      List<Period> weekdays = periods(week.several(RoomKeys.WEEKDAYS), want);
      List<Period> weekend = periods(week.several(RoomKeys.WEEKEND), want);
      List<Period> all = new ArrayList<>();
      for (int day = 0; day < DAYS; day++) {
        double midnight = day * Times.DAY;
        for (Period p : day < WORKING_DAYS ? weekdays : weekend) {
          all.add(new Period(midnight + p.start(), midnight + p.end(), p.value()));
        }
      }
      return steps(all, setback, DAYS * Times.DAY);
    }
    return steps(periods(programme.several(), want), setback, Times.DAY);
  }

  private static List<Period> periods(List<Value> values, double want) {
    List<Period> periods = new ArrayList<>();
    for (Value value : values) {
      Period period;
      if (value.hasKeys()) {
        Section s = value.section(((Form.Either) RoomKeys.PERIODS.each()).keys().table());
        double[] span = s.value(RoomKeys.PERIOD_TIME).map(Value::span).orElse(new double[] {0, 1});
        double own = s.value(RoomKeys.PERIOD_WANT).map(v -> v.number(WANT)).orElse(want);
        period = new Period(span[0], span[1], own);
      } else {
        double[] span = value.span();
        period = new Period(span[0], span[1], want);
      }
      for (Period earlier : periods) {
        if (overlap(earlier, period)) {
          value.problem(
              "overlaps "
                  + ClockText.show(earlier.start())
                  + "-"
                  + ClockText.show(
                      earlier.end() > Times.DAY ? earlier.end() - Times.DAY : earlier.end())
                  + "; periods must not");
        }
      }
      periods.add(period);
    }
    return periods;
  }

  private static boolean overlap(Period a, Period b) {
    for (int day = -1; day <= 1; day++) {
      double shift = day * Times.DAY;
      if (a.start() < b.end() + shift && b.start() + shift < a.end()) {
        return true;
      }
    }
    return false;
  }

  /** Periods on a background, as steps that repeat. */
  private static Timetable steps(List<Period> periods, double background, double repeat) {
    TreeMap<Double, Double> steps = new TreeMap<>();
    steps.put(0.0, background);
    for (Period p : periods) {
      steps.putIfAbsent(p.end() % repeat, background);
    }
    for (Period p : periods) {
      steps.put(p.start() % repeat, p.value());
      if (p.end() > repeat) {
        steps.put(0.0, p.value());
      }
    }
    return table(steps, repeat);
  }

  private static Timetable table(SortedMap<Double, Double> steps, double repeat) {
    double[] starts = new double[steps.size()];
    double[] values = new double[steps.size()];
    int n = 0;
    for (var step : steps.entrySet()) {
      starts[n] = step.getKey();
      values[n] = step.getValue();
      n++;
    }
    return new Timetable(repeat, starts, values);
  }

  /** Gains of a room, to air and as radiation. */
  record Gains(Timetable convective, Timetable radiant) {}

  /**
   * The gains of a room; several at the same time add up.
   *
   * @param room the room's section
   */
  static Gains gains(Section room) {
    if (!room.has(RoomKeys.GAINS)) {
      room.note(RoomKeys.GAINS, "none");
      return new Gains(Timetable.constant(0), Timetable.constant(0));
    }
    List<Period> convective = new ArrayList<>();
    List<Period> radiant = new ArrayList<>();
    for (Value value : room.several(RoomKeys.GAINS)) {
      Section s = value.section(RoomKeys.GAIN_TABLE);
      double heat = s.number(RoomKeys.GAIN_HEAT);
      double share = s.number(RoomKeys.GAIN_RADIANT);
      double[] span =
          s.value(RoomKeys.GAIN_TIME).map(Value::span).orElse(new double[] {0, Times.DAY});
      convective.add(new Period(span[0], span[1], heat * (1 - share)));
      radiant.add(new Period(span[0], span[1], heat * share));
    }
    return new Gains(sum(convective), sum(radiant));
  }

  private static Timetable sum(List<Period> periods) {
    TreeMap<Double, Double> steps = new TreeMap<>();
    steps.put(0.0, 0.0);
    for (Period p : periods) {
      steps.put(p.start() % Times.DAY, 0.0);
      steps.put(p.end() % Times.DAY, 0.0);
    }
    for (var step : steps.entrySet()) {
      double total = 0;
      for (Period p : periods) {
        double t = step.getKey();
        boolean on = (t >= p.start() && t < p.end()) || t + Times.DAY < p.end();
        total += on ? p.value() : 0;
      }
      step.setValue(total);
    }
    return table(steps, Times.DAY);
  }
}
