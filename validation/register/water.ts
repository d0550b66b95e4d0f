/** What the water line looked for: pipe, fittings, pads, pool rules, chemistry. */
import { type Chapter, entry } from './entry.ts';

const PAD_FACTS = 'NORA, Siegenthaler, Utah R392-302, Crane';

export const WATER_CHAPTER: Chapter = {
  title: 'Water',
  entries: [
    entry('Friction of Schedule 40 plastic pipe, C 150', 'Illinois Administrative Code 77-906', [
      'water/illinois-schedule-40',
    ]),
    entry('Friction and velocity of PVC class 160', 'university course table IR-BH-1', [
      'water/class-160-velocity',
      'water/class-160-loss',
    ]),
    entry('Forms of Hazen–Williams, velocity', 'EPANET 2 manual; PPFA; NFPA 13; SI', [
      'water/hazen-williams-forms',
      'water/velocity-form',
    ]),
    entry(
      'C of pipe materials',
      'LMNO Engineering; EPANET manual from memory',
      [],
      'A choice of the reader, 150 for new plastic unless told: no formula gives it.',
    ),
    entry('Colebrook over a grid', 'open library fluids 1.3.1', ['water/colebrook-grid']),
    entry(
      'Dimensions of PVC and CPVC',
      'ASTM D1785 and F441',
      ['water/pipe-bores', 'water/pipe-walls'],
      'Average bores of F441 and pressure ratings: losses are computed with the printed bore of D1785, and no job rates pipe.',
    ),
    entry('Friction factor at complete turbulence; lengths over diameter', 'Crane TP-410 (1986)', [
      'water/crane-ft',
      'packages/engine/src/water/fitting/fitting.test.ts',
    ]),
    entry('Solved problems of chapter 7', 'Crane TP-410 / 410M', [
      'water/crane-charts',
      'water/crane-worked',
    ]),
    entry(
      'Loss coefficients K',
      'Perry, Table 6-4; LMNO Engineering; EPANET manual from memory',
      ['water/k-perry', 'water/k-textbooks'],
      'Valves partly open, foot valves and meters: an opening is found from the flow it lets through, not from a handle.',
    ),
    entry('Equivalent lengths of PVC fittings', 'table in public circulation', [
      'water/plastic-equivalent-lengths',
    ]),
    entry('Head loss, expansion', 'Cengel and Cimbala, examples 8-3 and 8-6', ['water/cengel']),
    entry('Pipe loss and operating point', 'R package hydraulics', ['water/hydraulics-vignette']),
    entry('Properties of water at twelve temperatures', 'IAPWS, by the library iapws', [
      'properties/water-density',
      'properties/water-specificHeat',
      'properties/water-viscosity',
    ]),
    entry('Ten equipment pads', 'EPANET 2.2', [
      'network/pads-stored-flows',
      'network/pads-stored-heads',
      'network/pads-live-flows',
      'network/pads-live-heads',
      'network/pads-own-laws-flows',
      'network/pads-own-laws-heads',
      'water/heater-banks',
    ]),
    entry(
      'Two loops, parallel pipes, pump through two pipes',
      'msu_esd; Cengel 8-7 and White 6.16, 6.17 from memory',
      [
        'network/two-loops-plain',
        'network/two-loops-exchanger',
        'network/tanks-two-pipes',
        'network/three-pipes',
      ],
    ),
    entry('Valve characteristics, positional valve, Cv', 'valve-world.net; EPANET tests; Crane', [
      'water/valve-curves',
      'water/positional-valve',
      'packages/engine/src/water/valve/valve.test.ts',
    ]),
    entry(
      'Direct and reverse return, loop head, condensate, inlet temperatures, usual flows and rises',
      PAD_FACTS,
      ['water/heater-banks', 'water.header-flow', 'water.exchanger-inlet', 'water.temperature-rise'],
      'Path lengths of emitters and the 2.5 ft of a return loop belong to heating systems and to inlets of the pool.',
    ),
    entry(
      'Speed and size of a network engine',
      'measured once on another machine',
      [],
      'No truth to meet: what ours takes stands in the benchmarks.',
    ),
  ],
};

export const POOL_CHAPTER: Chapter = {
  title: 'Pool rules and chemistry',
  entries: [
    entry(
      'Turnover, velocity, filters, flow meters, suction outlets, freeze protection: figures read',
      'Wisconsin, D.C., Pima, Nevada, Wyoming, CDC, CPSC, 10 CFR 431.485',
      ['pool-rules/printed-limits', 'water.turnover', 'water.pipe-velocity'],
      'Main drains across the floor and the rating of their covers: built pools, named as a pointer only.',
    ),
    entry('Heat of a flow, columns of water, static head', 'ACHR News; EPANET tests', [
      'pool-rules/heat-flow',
      'pool-rules/columns-of-water',
    ]),
    entry(
      'Turnover and filtration flow worked; total head, affinity, water power, suction',
      'Wisconsin, California; Crane 7-32 to 7-34',
      ['pool-rules/turnover', 'pool-rules/remembered', 'packages/engine/src/water/pump/pump.test.ts'],
    ),
    entry(
      'System curves of the pump test',
      '10 CFR 431 subpart Y; Title 20, from memory',
      ['pool-rules/pump-test-heads', 'pool-rules/pump-test-power'],
      'Weighted energy factor and load points of a pump’s label: a pump is not rated here.',
    ),
    entry('Water hammer', 'UFC 3-230-13A; pump-zone.com', [
      'pool-rules/surge-manual',
      'pool-rules/surge-rigid',
    ]),
    entry('Factors of the saturation index', '10 NYCRR 6-1.30; Montana 37.115', [
      'chemistry/nycrr-factors',
      'chemistry/nycrr-factors-as-logarithms',
      'chemistry/montana-solids-constant',
    ]),
    entry(
      'Worked saturation indices and variants',
      '10 NYCRR 6-1.30; operator course; Standard Methods from memory',
      ['chemistry/worked-examples', 'chemistry/variants', 'chemistry/plummer-busenberg'],
    ),
    entry('Cyanuric acid off the alkalinity', 'Service Industry News; Wojtowicz from memory', [
      'chemistry/cyanurate-third',
      'chemistry/cyanurate-share',
    ]),
    entry(
      'Ranges of the water',
      'ANSI/APSP/ICC-11; 10 NYCRR; Montana',
      [
        'water.ph',
        'water.calcium-hardness',
        'water.total-alkalinity',
        'water.cyanuric-acid',
        'water.saturation-index',
        'water.saturation-index-heated',
      ],
      'Alkalinity by kind of chlorine, and New York’s and Montana’s own control levels: one standard’s ranges are asked.',
    ),
  ],
};
