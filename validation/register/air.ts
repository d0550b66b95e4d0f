/** What the air line looked for: combustion air, vents, terminals. */
import { type Chapter, entry } from './entry.ts';

const NFPA = 'NFPA 54-2012 chapter 9, in the 2013 California Plumbing Code';
const NFPA_VENT = 'NFPA 54-2012 chapters 12 and 13; IFGC 503 and 504';
const TRAINING = 'gas technician training text restating CSA B149.1';
const SUPPLY = 'packages/engine/src/air/supply/supply.test.ts';
const VENT = 'packages/engine/src/air/vent/vent.test.ts';

export const AIR_CHAPTER: Chapter = {
  title: 'Combustion air and vents',
  entries: [
    entry('Example of annex J, indoor and outdoor air together', 'NFPA 54-2012 annex J', [
      'air/nfpa-54-annex-j',
      'air/nfpa-54-annex-j-shares',
    ]),
    entry('Volumes at a known infiltration rate, Table E-1', 'IFGC appendix E (Minnesota)', [
      'air/ifgc-table-e-1',
    ]),
    entry('Volume method, cap of 0.60 air changes, openings, ducts, louvres, fan supply', NFPA, [
      'air/nfpa-54-si',
      'air.combustion-air',
      SUPPLY,
    ]),
    entry('Where openings begin, their least side, intake above ground', NFPA, [
      'air.opening-low',
      'air.opening-high',
      'air.opening-side',
      'air.terminal-over-ground',
    ]),
    entry(
      'One-opening method: clearance of 1 in and 6 in, area of the connectors; duct for one space, slope of the upper duct, screen mesh, interlock of the fan',
      NFPA,
      [],
      'Seen by eye on the job; no reading of the job holds them. The clearances follow the nameplate, which asks for more.',
    ),
    entry('Openings, ducts and enclosures of B149.1 tables 8.1 to 8.4', TRAINING, [
      'air/b149-openings',
      'air/b149-round-ducts',
      'air.supply-opening',
      'air.high-opening',
    ]),
    entry(
      'Height of the low opening over the floor, distance of the high one',
      TRAINING,
      [],
      'Not built: in Canada the openings are held by area only.',
    ),
    entry('Vent capacities 504.2(1), (2), (5): cells', NFPA_VENT, [
      'vent/chimney-type-b-natural',
      'vent/chimney-type-b-fan',
      'vent/chimney-type-b-fan-large',
      'vent/chimney-connector-natural',
      'vent/chimney-connector-fan',
      'vent/chimney-single-wall',
      VENT,
    ]),
    entry(
      'Common vents and connectors 504.3(1)',
      NFPA_VENT,
      ['vent/ifgc-appendix-b', 'vent/b149-examples', 'air.common-vent-carries', VENT],
      'The cells are carried; no relation of ours is held against them, for a common vent of two burners is not solved by it.',
    ),
    entry('Examples of vent sizing', 'IFGC appendix B; training text, annex C', [
      'vent/ifgc-appendix-b',
      'vent/ifgc-appendix-b-sizes',
      'vent/b149-examples',
    ]),
    entry('Elbows, long connectors, interpolation, heights the table does not hold', NFPA_VENT, [VENT]),
    entry('Longest connector, Table 13.2.2', 'NFPA 54-2012', ['vent/connector-length']),
    entry('Height of the cap over the roof, Table 12.7.2', 'NFPA 54-2012', [
      'vent/roof-pitch',
      'air.cap-over-roof',
    ]),
    entry('Vent 5 ft above the collar; maximum at sea level, minimum derated', NFPA_VENT, [
      'air.vent-high',
      'air.vent-stays-dry',
    ]),
    entry(
      'Corrugated liner 20 %, manifold 10 %, smaller vent 0.90, seven times the outlet, two sizes up, area rules, slope, share of height',
      NFPA_VENT,
      ['vent/ifgc-appendix-b'],
      'Taken off in the example of the liner only: the job has no readings for these, and a vent that needs them is drawn by hand.',
    ),
    entry('Terminals from openings, inlets, walkways, ground', `${NFPA_VENT}; CSA B149.1 8.14 as quoted`, [
      'air.flue-from-openings',
      'air.flue-from-inlet',
      'air.terminal-over-walkway',
      'air.terminal-over-ground',
    ]),
    entry(
      'Terminals from lot lines, inside corners, meters and an adjacent building; greatest input of a group',
      'IMC 804.3.3; New York City Fuel Gas Code 503.8',
      ['place.regulator-vent'],
      'One city’s figures, and distances for through-the-wall fans: not built, but for the gas regulator.',
    ),
    entry('Draught of a chimney, printed samples', 'ASHRAE; Steam, 35th edition, 1919', [
      'air/chimney-draught',
      'vent/chimney-constant',
    ]),
    entry(
      'Draught in mm of water by the excess of air',
      'thermal-engineering textbook, example 11.21',
      [],
      'The same relation with 353/T for the densities; its result is not in the copy.',
    ),
  ],
};
