package settle.sim.engine;

import java.util.Arrays;
import java.util.List;
import settle.sim.emitter.EmitterStepper;
import settle.sim.house.Branch;
import settle.sim.model.HouseModel;
import settle.sim.room.RoomStepper;
import settle.sim.source.FlowSearch;

/**
 * What emitters and pipes refer to in a step that is being tried: a temperature for each heat input
 * of the rooms, branches first. It is looked for until what the rooms then show is what was
 * referred to.
 */
final class References {

  /** Trials after which what was foreseen leads nowhere; two or three do in most steps. */
  private static final int FORESEEN_ROUNDS = 6;

  /** Move of a reference temperature whose answer says something [K]. */
  private static final double LEAST_MOVE = 1e-5;

  // Model
  private final HouseModel model;
  private final EmitterStepper[] emitters;

  /** Of each emitter, water and metal [J/K], and its exponent. */
  private final double[] emitterCapacity;

  private final double[] exponent;

  /** Weight of the star in what each heat input refers to [-]; the air has the rest. */
  private final double[] radiantFraction;

  // The trial
  /** [°C] */
  final double[] reference;

  /** What each heat input then gives [W], and by how much less per kelvin of the room [W/K]. */
  final double[] heat;

  private final double[] slope;

  // The trial before
  private final double[] lastReference;
  private final double[] lastHeat;

  private final FlowSearch[] search;

  References(HouseModel model, EmitterStepper[] emitters) {
    this.model = model;
    this.emitters = emitters;
    int branches = emitters.length;
    emitterCapacity = new double[branches];
    exponent = new double[branches];
    List<Branch> branchList = model.arrangement().branches();
    for (int b = 0; b < branches; b++) {
      emitterCapacity[b] =
          HouseModel.heatCapacity(branchList.get(b).emitter(), model.house().water());
      exponent[b] = branchList.get(b).emitter().exponent();
    }
    int heats = model.heatInputs();
    radiantFraction = new double[heats];
    for (int b = 0; b < branches; b++) {
      radiantFraction[b] = model.radiantFraction(b);
    }
    reference = new double[heats];
    heat = new double[heats];
    slope = new double[heats];
    lastReference = new double[branches];
    lastHeat = new double[branches];
    search = new FlowSearch[heats];
    Arrays.setAll(search, i -> new FlowSearch());
  }

  /** Begins a step: no trial of it has shown anything yet. */
  void begin(RoomStepper rooms) {
    Arrays.fill(lastReference, Double.NaN);
    feel(rooms, 0);
  }

  /**
   * Takes what the rooms now show for what emitters and pipes refer to; what was referred to
   * closely enough stays, so that those need not be tried again.
   *
   * @param close how closely that is [K]
   */
  private void feel(RoomStepper rooms, double close) {
    for (int i = 0; i < reference.length; i++) {
      double felt = rooms.felt(i, radiantFraction[i]);
      if (!(Math.abs(felt - reference[i]) < close)) {
        reference[i] = felt;
      }
    }
  }

  /** How far what the rooms show is from what was referred to [K], the worst of all. */
  double off(RoomStepper rooms) {
    double off = 0;
    for (int i = 0; i < heat.length; i++) {
      off = Math.max(off, Math.abs(rooms.felt(i, radiantFraction[i]) - reference[i]));
    }
    return off;
  }

  /** What an emitter refers to where the rooms now are [°C]. */
  double now(int branch, RoomStepper rooms) {
    int r = model.branchRoom(branch);
    double share = radiantFraction[branch];
    return share * rooms.star(r) + (1 - share) * rooms.air(r);
  }

  /**
   * Foresees with what reference temperatures the next trial will agree; where that does not lead
   * there soon, each is looked for by itself, between one that was too low and one that was too
   * high.
   *
   * @param round trials so far, from 1 on
   * @param h length of the step [s]
   * @param passing m c h of the water through each emitter [J/K]
   * @param inlet temperature at which it enters [°C]
   * @param rooms which answer
   * @param close how close a temperature that was referred to has to be to stay [K]
   */
  void foresee(
      int round, double h, double[] passing, double[] inlet, RoomStepper rooms, double close) {
    findSlopes(h, passing, inlet);
    if (round <= FORESEEN_ROUNDS) {
      rooms.foresee(heat, slope, reference, radiantFraction);
      feel(rooms, close);
      return;
    }
    for (int i = 0; i < heat.length; i++) {
      if (round == FORESEEN_ROUNDS + 1) {
        search[i].begin();
      }
      reference[i] = search[i].next(reference[i], rooms.felt(i, radiantFraction[i]));
    }
  }

  /**
   * By how much less a kelvin of the room lets each heat input give. Of the water that is in an
   * emitter or passes it, C + m c h, a share phi of the excess is given; its temperature then rises
   * by 1 - (1 - phi)^n per kelvin of the reference, and the rest of that kelvin is heat kept back.
   * Where only part of the water is warmer than the room that says too little: what the last two
   * trials showed counts then. Too steep a slope only takes longer.
   */
  private void findSlopes(double h, double[] passing, double[] inlet) {
    for (int b = 0; b < emitters.length; b++) {
      double capacity = emitterCapacity[b] + passing[b];
      double entered = passing[b] > 0 ? passing[b] * inlet[b] : 0;
      double excess = emitters[b].stored() + entered - capacity * reference[b];
      double phi = excess > 0 ? Math.min(heat[b] * h / excess, 1) : 0;
      double shown = -(heat[b] - lastHeat[b]) / (reference[b] - lastReference[b]);
      boolean says = Math.abs(reference[b] - lastReference[b]) > LEAST_MOVE;
      slope[b] = capacity / h * (1 - Math.pow(1 - phi, exponent[b]));
      slope[b] = says && shown > slope[b] ? shown : slope[b];
      lastHeat[b] = heat[b];
      lastReference[b] = reference[b];
    }
    for (int r = 0; r < model.house().rooms().size(); r++) {
      if (model.pipeHeatInput(r) >= 0) {
        slope[model.pipeHeatInput(r)] = model.pipeConductance(r);
      }
    }
  }
}
