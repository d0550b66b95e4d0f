/** The subjects that a heater meets in the codes: which rules answer each, and what is left open, with the reason. */

export interface CodeSubjectRow {
  readonly subject: string;
  /** Ids of the rules that answer it. */
  readonly rules: readonly string[];
  /** What is not answered, and why. */
  readonly open: readonly string[];
}

const CANADA_SIZING =
  'Canada: sizing tables of annexes A and B, not read; the drop they start from is checked, and the pressure at the heater by physics';

export const CODE_SUBJECT_ROWS: readonly CodeSubjectRow[] = [
  {
    subject: 'Gas sizing',
    rules: ['gas.code-pressure', 'gas.section-capacity', 'gas.design-drop'],
    open: [CANADA_SIZING],
  },
  {
    subject: 'Gas pressure test and leaks',
    rules: ['gas.test-pressure', 'gas.test-duration', 'gas.test-gauge-range', 'gas.test-gas', 'gas.no-leak'],
    open: [
      'United States: time by volume in other than small dwellings and hoop stress above 125 psi, no pool heater comes near',
      'Canada: table 6.3 in full, 100 psi for coated pipe and welded joints, not read; gauge face of 3 in, not asked',
    ],
  },
  {
    subject: 'Drip leg, dirt pocket',
    rules: ['gas.sediment-trap', 'gas.sediment-trap-nipple'],
    open: [],
  },
  {
    subject: 'Gas shut-off and union',
    rules: ['gas.shut-off-accessible', 'gas.shut-off-distance', 'gas.union'],
    open: ['Canada: greatest distance of the shut-off, not recalled'],
  },
  {
    subject: 'Bonding of corrugated gas tubing',
    rules: ['gas.csst-bonded', 'gas.csst-bond-size', 'gas.csst-bond-length'],
    open: ['Tubing with an arc-resistant jacket, which its maker may exempt: by the maker’s instructions'],
  },
  {
    subject: 'Buried gas pipe and polyethylene',
    rules: [
      'gas.burial-depth',
      'gas.plastic-underground',
      'gas.plastic-risers',
      'gas.tracer',
      'gas.tracer-size',
    ],
    open: [
      'Canada: size of the tracer wire, not recalled',
      'Coating and cathodic protection of buried steel: no reading',
    ],
  },
  {
    subject: 'Purging',
    rules: [
      'gas.purge-where',
      'gas.purge-inert',
      'gas.purge-from-ignition',
      'gas.purge-from-openings',
      'gas.purge-from-intake',
      'gas.purge-end',
    ],
    open: ['Canada: distances of the outlet and the end of the purge, annex H not read'],
  },
  {
    subject: 'Combustion and ventilation air',
    rules: [
      'air.combustion-air',
      'air.supply-opening',
      'air.high-opening',
      'air.opening-low',
      'air.opening-high',
      'air.opening-side',
      'air.opening-low-band',
      'air.one-opening-room',
      'air.screen-mesh',
      'air.intake-high',
      'air.duct-alone',
      'air.duct-rises',
      'air.supply-interlock',
    ],
    open: ['Distance between the two openings of a Canadian room: no reading'],
  },
  {
    subject: 'Vents and terminals',
    rules: [
      'air.vent-suits',
      'air.vent-carries',
      'air.vent-stays-dry',
      'air.common-vent-carries',
      'air.vent-high',
      'air.cap-over-roof',
      'air.flue-from-openings',
      'air.flue-from-inlet',
      'air.terminal-over-ground',
      'air.terminal-over-walkway',
      'air.terminal-under-deck',
      'air.flue-from-next-door',
      'air.vent-not-wide',
      'air.chimney-area',
      'air.connector-length',
      'air.vent-slope',
      'air.single-wall-warm',
      'air.condensate-off-walkway',
    ],
    open: [
      'Inside corners, meters beside a horizontal terminal, power exhausters 10 ft from a lot line: local codes, not carried',
      'Masonry chimneys: area against the outlet alone, the tables of chimneys not read',
    ],
  },
  {
    subject: 'Clearances and siting',
    rules: [
      'place.clearance',
      'place.unlisted-clearance',
      'place.service-room',
      'place.base-height',
      'place.ignition-height',
      'place.not-under-deck',
      'place.property-line',
      'place.hot-surfaces',
      'place.propane-tank',
      'place.regulator-vent',
      'place.electrical-space',
      'place.listed',
      'place.controls-barred',
      'place.wall-mounted',
    ],
    open: [
      'Relief outlet of a propane container 5 ft from an opening below it: no reading',
      'Access ways to a heater in an attic, crawl space or on a roof: no reading',
    ],
  },
  {
    subject: 'Indoor siting of finned-tube heaters in Canada',
    rules: ['place.finned-tube-enclosure', 'place.yearly-service'],
    open: ['What the enclosure must be made of: clause 7.25 not read'],
  },
  {
    subject: 'Electrical supply',
    rules: [
      'power.voltage-drop',
      'power.supply-sag',
      'power.wire-carries-load',
      'power.breaker-carries-load',
      'power.breaker-protects-wire',
      'power.conductor-copper',
      'power.equipment-ground',
      'power.fixed-wiring',
    ],
    open: ['Electric pool heaters and their 125 % rule: gas heaters only'],
  },
  {
    subject: 'Ground-fault protection and disconnect',
    rules: [
      'power.ground-fault',
      'power.ground-fault-near-water',
      'power.disconnect-in-sight',
      'power.disconnect-from-water',
    ],
    open: ['Receptacles around the pool: not of the heater'],
  },
  {
    subject: 'Bonding',
    rules: [
      'power.bonded',
      'power.bond-size',
      'power.bond-solid',
      'power.water-bond',
      'power.perimeter-bonded',
      'power.perimeter-points',
      'power.perimeter-width',
      'power.ring-distance',
      'power.ring-depth',
      'power.grid-pitch',
    ],
    open: ['Fixed metal parts near the pool: not of the heater'],
  },
  {
    subject: 'Low voltage and burial of wiring',
    rules: [
      'power.low-voltage-apart',
      'power.low-voltage-spacing',
      'power.burial-depth',
      'power.burial-near-pool',
      'power.raceway-near-pool',
      'power.remote-from-water',
    ],
    open: ['Canada: section 12 on burial, not read'],
  },
  {
    subject: 'Pool barriers',
    rules: [],
    open: ['A pointer only: the head of every check says to look them up'],
  },
  {
    subject: 'Temperature limit',
    rules: ['heat.not-too-hot'],
    open: ['California’s building code for spas, the same 104 °F: not carried as an edition'],
  },
  {
    subject: 'Relief valve',
    rules: [
      'water.relief-valve',
      'water.relief-setting',
      'water.relief-capacity',
      'water.relief-discharge',
      'water.relief-discharge-end',
      'water.relief-stamp',
    ],
    open: [
      'Rise of pressure at full fire, extra valves, smallest and largest size: boiler rules, no reading',
    ],
  },
  {
    subject: 'Check valve and chemical feeder, bypass',
    rules: ['water.check-valve', 'water.feeder-order', 'water.bypass-line'],
    open: ['Backflow protection of the fill line: not of the heater'],
  },
  {
    subject: 'Velocities and suction',
    rules: ['water.pipe-velocity'],
    open: [
      'Entrapment rules of drains: not of the heater; a pump that is made faster needs its covers looked at',
    ],
  },
  {
    subject: 'Energy: cover, switch, pilot, timer',
    rules: [
      'heat.cover',
      'heat.no-pilot',
      'power.off-switch',
      'power.off-switch-distance',
      'power.time-switch',
      'water.solar-pipe',
      'heat.primary-source',
    ],
    open: [
      'ASHRAE 90.1 with its R-12 cover above 90 °F: no place here adopts it by itself',
      'Canada: national and provincial energy codes, not recalled',
    ],
  },
  {
    subject: 'Least efficiency of the appliance',
    rules: ['heat.efficiency-least', 'heat.integrated-efficiency'],
    open: [
      'Canada: regulations on energy efficiency, figure for pool heaters not recalled',
      'California Title 20: federal law goes first',
    ],
  },
  {
    subject: 'Boiler inspection',
    rules: ['water.boiler-inspection', 'water.relief-stamp', 'water.flow-proving'],
    open: [
      'Each state’s own limits: one usual set stands for all',
      'Canada: provinces go by heating surface or power, not recalled',
    ],
  },
  {
    subject: 'Licences and permits by kind of work',
    rules: [
      'gas.permit',
      'gas.licence',
      'power.permit',
      'power.licence',
      'place.permit',
      'water.boiler-inspection',
    ],
    open: ['States and provinces beyond the table below: not surely recalled'],
  },
  {
    subject: 'Duties on an immediate hazard',
    rules: [
      'gas.fuel-matches',
      'gas.burner-pressure-lock-up',
      'gas.no-leak',
      'air.co-air-free',
      'power.no-tingle',
    ],
    open: ['The province’s own tag and its days of grace: not recalled'],
  },
];
