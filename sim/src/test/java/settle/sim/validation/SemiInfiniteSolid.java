package settle.sim.validation;

import org.apache.commons.math3.special.Erf;

/**
 * Half-space at one temperature whose air, behind a film h, steps by 1 K: Carslaw and Jaeger,
 * Conduction of Heat in Solids, 2nd edition 1959, section 2.7, equation 1; Incropera and DeWitt
 * equation 5.60.
 *
 * @param conductivity lambda [W/(m K)]
 * @param diffusivity alpha [m2/s]
 */
record SemiInfiniteSolid(double conductivity, double diffusivity) {

  static SemiInfiniteSolid of(double conductivity, double density, double specificHeat) {
    return new SemiInfiniteSolid(conductivity, conductivity / (density * specificHeat));
  }

  /** Temperature rise at depth x after time t per kelvin of air step, film h [W/(m2 K)]. */
  double afterAirStep(double depth, double time, double film) {
    double root = Math.sqrt(diffusivity * time);
    double eta = depth / (2 * root);
    double biot = film * root / conductivity;
    // e^(h x/lambda + biot^2) erfc(eta + biot): the two factors over- and underflow far beyond any
    // case here.
    return Erf.erfc(eta)
        - Math.exp(film * depth / conductivity + biot * biot) * Erf.erfc(eta + biot);
  }

  /** Temperature rise at depth x after time t per kelvin of surface step. */
  double afterSurfaceStep(double depth, double time) {
    return Erf.erfc(depth / (2 * Math.sqrt(diffusivity * time)));
  }

  /**
   * Rise of the bare surface after time t under a constant flux [W/m2] (section 2.9, equation 7).
   */
  double surfaceUnderFlux(double flux, double time) {
    return 2 * flux / conductivity * Math.sqrt(diffusivity * time / Math.PI);
  }
}
