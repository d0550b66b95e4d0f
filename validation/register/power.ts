/** What the power line looked for. */
import { type Chapter, entry } from './entry.ts';

const NEC = 'National Electrical Code 2011, in the 2013 California Electrical Code';

export const POWER_CHAPTER: Chapter = {
  title: 'Power',
  entries: [
    entry('Resistance and area of copper, chapter 9 Table 8', 'National Electrical Code', [
      'electric/nec-table-8-resistance',
      'electric/nec-table-8-area',
      'electric/area-for-drop',
      'electric/catalogue-resistance',
    ]),
    entry(
      'Ampacity of copper, Table 310.16, and small conductors, 240.4(D)',
      'National Electrical Code 2023',
      ['electric/nec-310.16', 'electric/small-conductors', 'electric/nec-ambient-factors'],
    ),
    entry('Equipment grounds, Table 250.122', 'National Electrical Code', [
      'electric/nec-250.122-grounds',
      'power.equipment-ground',
    ]),
    entry('Cover, Table 300.5', NEC, [
      'electric/nec-300.5-cover',
      'electric/nec-300.5-slab-raceway',
      'power.burial-depth',
    ]),
    entry('Cover near a pool, Table 680.10', NEC, ['electric/nec-680.10-cover', 'power.burial-near-pool']),
    entry('Bonding: conductor, grid, perimeter, ring, water', `${NEC}; CSA C22.1 68-058 as quoted`, [
      'electric/nec-680-figures',
      'electric/c22-68-figures',
      'power.bond-size',
      'power.grid-pitch',
      'power.perimeter-points',
      'power.perimeter-width',
      'power.ring-distance',
      'power.ring-depth',
      'power.water-bond',
    ]),
    entry(
      'Bonding: small fittings, fixed metal beyond 5 and 12 ft, heaters over 50 A, grid within 6 in of the shell',
      NEC,
      [],
      'Exceptions that free metal from bonding, or metal in the concrete: the bond of the heater is asked for in any case.',
    ),
    entry(
      'Ground faults: gas heaters, contact limits, receptacles by distance',
      'NEC 2017 680.2 and 680.28; Quebec B-1.1',
      ['electric/contact-limits', 'power.ground-fault', 'power.ground-fault-near-water'],
    ),
    entry('Disconnect and switches by distance, other outlets', NEC, [
      'power.disconnect-from-water',
      'power.off-switch-distance',
      'power.remote-from-water',
    ]),
    entry(
      'Receptacles at the pool: distance, one required, height',
      NEC,
      [],
      'A gas heater is wired for good and takes no receptacle; the rule is about the rest of the yard.',
    ),
    entry(
      'Electric heaters: 125 %, 48 A, 60 A',
      NEC,
      [],
      'The program is about gas-fired heaters; an electric one beside it is a load on its own breaker.',
    ),
    entry(
      'Pool motors: ground of 12 AWG at least',
      NEC,
      [],
      'The circuit of the pump is not checked; the heater’s own is.',
    ),
    entry('Low voltage apart from power, 2 in and 1/4 in', NEC, [
      'power.low-voltage-apart',
      'power.low-voltage-spacing',
    ]),
    entry('Drop of 3 % and 5 %; worked drops', `${NEC}; teaching pages`, [
      'power.voltage-drop',
      'electric/voltage-drop-examples',
      'electric/exact-k',
      'packages/engine/src/power/power.test.ts',
    ]),
    entry('Reach of section 68, 3 m', 'CSA C22.1 as quoted', [
      'electric/c22-68-figures',
      'power.ground-fault-near-water',
    ]),
  ],
};
