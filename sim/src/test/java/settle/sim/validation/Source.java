package settle.sim.validation;

/**
 * Where expected values come from. The name of a constant is what data files write after "source:".
 */
enum Source {
  EN_442(
      "EN 442-2:2014",
      "Radiators and convectors, part 2: test methods and rating; characteristic equation"),
  PLUG_FLOW(
      "Plug-flow energy balance",
      "m c dy/dx = -K' y^n and C' dy/dt = -K' y^n, elementary integrals"),
  TWO_TUBES(
      "Heat balance of two tubes in one metal",
      "water, two halves of metal, web and film, integrated from the far end by separate code"),
  MORCOS("Morcos and Bergles 1975", "J. Heat Transfer 97: mixed convection in horizontal tubes"),
  BASEBOARD("Trade literature on baseboard", "Correction of output for the flow of water"),
  CHURCHILL_CHU(
      "Churchill and Chu 1975", "Int. J. Heat Mass Transfer 18, pages 1049-1053 and 1323-1329"),
  INCROPERA(
      "Incropera and DeWitt",
      "Fundamentals of Heat and Mass Transfer, 6th edition, chapters 3, 5, 8 and 9, Table A.4"),
  US_ATMOSPHERE(
      "U.S. Standard Atmosphere 1976", "NOAA/NASA/USAF, part 1: viscosity and conductivity of air"),
  OVEN_EXAMPLE(
      "Public textbook companion, book 1309",
      "Example 8.5: free convection from an oven side, inputs and method"),
  ISO_6946("ISO 6946:2017", "Thermal resistance and thermal transmittance, calculation methods"),
  ISO_10211("ISO 10211:2017", "Thermal bridges: detailed calculations, test cases, from memory"),
  ISO_13370("ISO 13370:2017", "Heat transfer via the ground, from memory"),
  CIBSE_A("CIBSE Guide A 2006", "Environmental design, U-values of ground floors, from memory"),
  ISO_13786(
      "ISO 13786:2007", "Dynamic thermal characteristics, clauses 7 and 8: heat transfer matrix"),
  ISO_13791(
      "ISO 13791:2004",
      "Internal temperatures in summer without cooling: tests of conduction, from memory"),
  RD_SAP("RdSAP 2009", "Reduced-data assessment of UK dwellings: U-values by age, from memory"),
  SAP("SAP 2012", "UK assessment of dwellings: temperature with heating off, from memory"),
  GAS_READINGS(
      "Gas readings of one house",
      "Weekly gas before and after filling the cavity; Debian package r-cran-mass 7.3-58.2"),
  CARSLAW_JAEGER(
      "Carslaw and Jaeger", "Conduction of Heat in Solids, 2nd edition 1959, sections 2.4 to 2.7"),
  GEANKOPLIS("Geankoplis", "Transport Processes and Unit Operations, example 5.3-1"),
  IAPWS_IF97(
      "IAPWS-IF97", "Industrial formulation for water and steam, release of 2007, revised 2012"),
  STEAM_TABLES("Steam tables", "Saturated water and vapour, any table"),
  IAPWS_2011(
      "IAPWS 2011",
      "Thermal conductivity of ordinary water substance; SR6-08 for liquid water at 0.1 MPa"),
  IF97_LIBRARY("com.hummeling:if97 1.0.5", "General-purpose library of IAPWS-IF97"),
  EN_1057("EN 1057", "Seamless round copper tubes for water and gas: diameters and walls"),
  ISO_10456(
      "EN ISO 10456:2007", "Building materials and products: tabulated design values, Table 3"),
  COLEBROOK("Colebrook 1939", "J. Inst. Civ. Eng. 11, pages 133-156"),
  CENGEL("Cengel and Cimbala", "Fluid Mechanics, examples 8-2 and 8-3"),
  WHITE("White", "Fluid Mechanics, examples 6.7, 6.16 and 6.17"),
  ISO_12241("EN ISO 12241:2008", "Thermal insulation of installations: calculation rules"),
  ONE_PIPE(
      "Rule for one-pipe loops",
      "water after an emitter: that of the flow less all heat so far over m c; common practice"),
  IEC_60534("IEC 60534-1", "Control valves: flow coefficient Kv; also VDI/VDE 2173"),
  STIRRED_CELLS(
      "Stirred cells in series", "1 - e^(-Mt) sum (Mt)^k/k!, any text on reaction engineering"),
  ROOM_SOLUTIONS(
      "Closed forms of small rooms", "Eigenvalues of one and two nodes, balance of a star at rest"),
  EN_12831("EN 12831:2003 and EN 12831-1:2017", "Design heat load"),
  EN_215(
      "EN 215:2004 and 2019",
      "Thermostatic radiator valves: requirements and test procedure, from memory"),
  EN_14511("EN 14511-2 and -3", "Heat pumps: rating points and what is measured there"),
  EN_14825(
      "EN 14825:2018",
      "Heat pumps at part load: reference seasons, bin method, degradation of the COP by cycling"),
  REGULATION_811(
      "Regulation (EU) 811/2013", "Energy labelling of space heaters, Annex VII: the season"),
  CARNOT(
      "Carnot cycle", "Reversible heat pump between two temperatures, any text on thermodynamics"),
  CYCLING_WATER(
      "Closed forms of cycling water",
      "Mixed volumes between two switching temperatures, elementary integrals"),
  SWITCHED_LAG(
      "Switched first-order lag",
      "Exponentials between switchings, straight strokes; any text on control"),
  SEBORG(
      "Seborg, Edgar and Mellichamp",
      "Process Dynamics and Control, 2nd edition 2004: second-order response, from memory"),
  SIMC("Skogestad 2003", "J. Process Control 13, pages 291-309: PI rules for a lag with dead time"),
  HEATING_CURVE(
      "Heating curve", "Emitter and house in proportion to their temperature differences"),
  DEGREE_HOURS("Degree-hours", "Heat as conductance times degree-hours, any text on heating"),
  HOURLY_NORMALS(
      "NOAA hourly normals 1981-2010",
      "Seattle-Tacoma, US government work, as the npm package vega-datasets 2.11.0 carries them"),
  ISO_7730("ISO 7730:2005", "Ergonomics of the thermal environment: PMV, PPD, local discomfort"),
  NORMAL(
      "Normal distribution",
      "Sums and logarithms of normal variables; tables of Phi in any text on statistics"),
  ASHRAE(
      "ASHRAE Handbook", "HVAC Systems and Equipment, boilers: efficiency over inlet, from memory"),
  TRADE(
      "Trade press",
      "Two UK trade articles on condensing boilers: what efficiency to expect where"),
  MINNESOTA("State of Minnesota", "Energy office, advice to householders on condensing boilers"),
  STOICHIOMETRY(
      "Combustion of methane",
      "Stoichiometry with dry air, IAPWS-IF97 saturation line, ISO 6976 heats");

  private final String shortName;
  private final String about;

  Source(String shortName, String about) {
    this.shortName = shortName;
    this.about = about;
  }

  String shortName() {
    return shortName;
  }

  String about() {
    return about;
  }
}
