package settle.sim.engine;
import org.junit.jupiter.api.Test;
import settle.sim.emitter.*;
import settle.sim.house.House;
import settle.sim.recording.*;
class SmokeTest {
  @Test void run() {
    PlugFlow p = new PlugFlow(11, 2000, EmissionLaw.distributedCoefficient(1430,1.3), 1.3, 17);
    double m=0.0005*4180; double ref=17;
    for (int i=0;i<40;i++){ double h = i<5?10: i<10?40: i<20?160:640; double T= ref+0.01*(i%3); p.attempt(h,m,60,T); double q=p.emitted()/h; double e=p.emissionNow(); p.accept(); if(i>20)System.out.printf("%d h %.0f q %.2f now %.2f ret %.3f parcels %d%n", i,h,q,e,p.meanReturn(),p.parcels()); }
    House house = SampleHouses.eightRooms(7, SampleHouses.ideal());
    for (int a = 0; a < 2; a++) {
      HouseModel model = new HouseModel(house, house.arrangements().get(a), 1);
      System.out.println("states " + model.states());
      for (int k = 0; k < 100; k++) {
        long t0 = System.nanoTime();
        HouseRun run = new HouseRun(model, house.run());
        long t1 = System.nanoTime();
        run.run();
        long t2 = System.nanoTime();
        if (k % 20 == 19) System.out.printf("setup %.2f ms run %.2f ms steps %d  ns/step %.0f%n", (t1-t0)/1e6, (t2-t1)/1e6, run.steps(), (t2-t1)/(double)run.steps());
        if (k == 99) {
          var l = run.ledger();
          System.out.println(l + " err " + l.error() + " room " + l.roomError() + " water " + l.waterError());
          Trace t = run.trace();
          for (int i = 0; i < 100; i += 1) System.out.printf("%6.3f  a %.2f op %.2f want %.1f heat %.0f  m %.4f ret %.2f Tb %.2f open %.3f | op5 %.2f heat %.0f%n", t.time()[i]/3600, t.column(RoomColumn.AIR,0)[i], t.column(RoomColumn.OPERATIVE,0)[i], t.column(RoomColumn.WANT,0)[i], t.column(RoomColumn.HEAT,0)[i], t.column(BranchColumn.MASS_FLOW,0)[i], t.column(BranchColumn.RETURN,0)[i], t.column(BranchColumn.SENSED,0)[i], t.column(BranchColumn.OPENING,0)[i], t.column(RoomColumn.OPERATIVE,4)[i], t.column(RoomColumn.HEAT,4)[i]);
        }
      }
    }
  }
}
