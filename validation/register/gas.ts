/** What the gas line looked for. */
import { type Chapter, entry } from './entry.ts';

const IFGC = 'International Fuel Gas Code 2018';
const CALIFORNIA = '2013 California Plumbing Code (NFPA 54-2012)';
const APPENDIX = 'IFGC appendix A, 2012 as the 2013 California Residential Code prints it, 2018 in part';
const TRAINING = 'gas technician training text restating CSA B149.1';

const STEEL = ['3', '5', '6', '25', '27', '28'].map((n) => `gas/ifgc-2018-402-4-${n}`);
const COPPER = ['11', '12', '13', '30', '31'].map((n) => `gas/ifgc-2018-402-4-${n}`);
const PLASTIC = ['20', '22', '35'].map((n) => `gas/ifgc-2018-402-4-${n}`);

export const GAS_CHAPTER: Chapter = {
  title: 'Fuel gas',
  entries: [
    entry(
      'Capacities of steel pipe: natural gas 402.4(3), (5), (6); propane (25), (27), (28)',
      IFGC,
      STEEL,
      'Rows that the copy cuts off, and (1), (2), (4), (7), (24), (26), which no copy shows.',
    ),
    entry(
      'Capacities of copper tube: natural gas 402.4(11), (12), (13); propane (30), (31)',
      IFGC,
      COPPER,
      'Rows that the copy cuts off, and (8) to (10), (14), which no copy shows.',
    ),
    entry(
      'Capacities of polyethylene pipe: natural gas 402.4(20), (22); propane (35)',
      IFGC,
      PLASTIC,
      'Rows that the copy cuts off, and (21), (23), (34), (36), (37), which no copy shows.',
    ),
    entry('Capacities of steel pipe for propane at 2 psi, to 2000 ft: 1216.2(26)', CALIFORNIA, [
      'gas/california-2013-1216-2-26',
    ]),
    entry('Capacities of copper tube for propane at 10 psi, to 2000 ft: 1216.2(28)', CALIFORNIA, [
      'gas/california-2013-1216-2-28',
    ]),
    entry(
      'Corrugated tubing, propane: 402.4(32), (33)',
      'International Residential Code 2018; IFGC 2018',
      [
        'gas/rows-of-csst-11-inwc',
        'gas/rows-of-csst-2-psi',
        'gas/law-of-csst-11-inwc',
        'gas/law-of-csst-2-psi',
      ],
      'The tables are carried; only an inner row can be held against its neighbours, for no law of a smooth wall fits.',
    ),
    entry(
      'Corrugated tubing, natural gas at 6 in w.c. and at 5 psi: 1216.2(16), (18)',
      CALIFORNIA,
      [],
      'Not carried: natural gas is worked out from the propane tables by gravity, and the maker’s own table governs.',
    ),
    entry('Deviation of each table from the sizing equation', 'worked out from the tables above', [
      ...STEEL,
      ...COPPER,
      ...PLASTIC,
    ]),
    entry('Sizing equations, Cr and Y', `${CALIFORNIA}, 1216.3; IFGC A.4`, [
      'gas/california-2013-factors',
      'gas/california-2013-factor-worked',
      'packages/engine/src/gas/code/code-equations.test.ts',
    ]),
    entry(
      'Equivalent lengths of fittings, Table A.2.2',
      'International Residential Code 2018, appendix A',
      ['gas/irc-2018-a22'],
      'The second half (welding tees, valves) is cut off in every copy; the catalogue carries it from memory and says so.',
    ),
    entry('Gravity multipliers, Table A.2.4', APPENDIX, ['gas/ifgc-2018-a24', 'gas/california-2013-a24']),
    entry(
      'Bores of steel and copper, Tables A.5.1 and A.5.2',
      APPENDIX,
      ['gas/california-2013-bores'],
      'Steel of 3-1/2 in, copper of 2-1/2 and 3 in, types L and ACR: not in the catalogue, which sizes by type K as the tables do.',
    ),
    entry('Capacity for a drop each 100 ft, A.3.4', 'Michigan Residential Code 2015', [
      'gas/michigan-2015-hundred-foot',
      'gas/california-2013-scaling',
    ]),
    entry('Examples of the 100 ft method', `${APPENDIX}; California code 2010`, [
      'gas/california-2010-hundred-foot',
      'gas/california-2013-drops',
    ]),
    entry('Examples of longest length, branch length, hybrid pressure, added branch', APPENDIX, [
      'gas/california-2013-steel-example',
      'gas/california-2013-tubing-examples',
      'gas/ifgc-a72',
      'gas/ifgc-a72-capacity',
      'gas/nfpa-54-c71',
      'gas/umc-1316',
    ]),
    entry('Test gauge in the cold', APPENDIX, [
      'gas/ifgc-2018-a75',
      'packages/engine/src/gas/testing/testing.test.ts',
    ]),
    entry(
      'Pressure test: factor, least pressure, time, gauge, gas',
      'IFGC 406.4; IRC G2417',
      ['gas.test-pressure', 'gas.test-duration', 'gas.test-gauge-range', 'gas.test-gas'],
      'The hoop stress above 125 psi and the Navy’s 50 psi for buried mains: no pool heater stands behind either.',
    ),
    entry('Purge outdoors by size and length, Table 406.7.1.1', 'IFGC; IRC G2417.7.1.1', [
      'gas/irc-2018-purge',
      'gas.purge-where',
    ]),
    entry('Purge: inert gas first, distances of the discharge, end', 'IFGC 406.7.1; UPC 1213.6', [
      'gas.purge-inert',
      'gas.purge-from-ignition',
      'gas.purge-from-openings',
      'gas.purge-from-intake',
      'gas.purge-end',
    ]),
    entry('Rating at altitude', 'NFPA 54, 11.1.2 and Table E.1.1(d); CSA B149.1 from memory', [
      'altitude/nfpa-54-derate',
      'altitude/b149-derate',
      'gas.altitude-rating',
    ]),
    entry(
      'Inputs of other appliances, Table 402.2',
      'trade pages quoting the National Fuel Gas Code',
      [],
      'No table of usual inputs is carried: what else burns is read off its own plate.',
    ),
    entry(
      'Heating values and a gas composition',
      'IFGC A, UMC 1316; an AGA 5 worksheet',
      ['gas/california-2013-steel-example', 'gas/umc-1316'],
      'The worksheet prints results without its composition, so that nothing can be put in.',
    ),
    entry('Seconds for a cubic foot against ft3/h', 'list in a public forum thread', ['gas/clocking-list']),
    entry('Meter clocked, with pressure and temperature', `service pages; ${TRAINING}`, [
      'gas/clocking-pages',
      'gas/clocking-training',
    ]),
    entry('Sizes, zones, capacities and fittings of the Canadian examples', TRAINING, [
      'gas/b149-sizes',
      'gas/b149-zones',
      'gas/b149-capacities',
      'gas/b149-fittings',
    ]),
    entry('Greatest drop by supply pressure, B149.1 table 6.1', TRAINING, ['gas.design-drop']),
    entry(
      'Test pressures and times of B149.1 table 6.3',
      TRAINING,
      ['gas.test-pressure'],
      'The table is not open: only the lines the text restates are carried. Gauge face and explosive limits are told nowhere.',
    ),
    entry('Vapour pressure and draw of propane', 'propane dealer’s charts; a dew-point handbook', [
      'gas/propane-vapour-chart',
      'gas/propane-vapour-fit',
      'gas/tank-trade-rule',
      'gas/propane-cylinder-chart',
    ]),
  ],
};
