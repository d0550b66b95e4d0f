/** What the place line, relief and the energy rules looked for. */
import { type Chapter, entry } from './entry.ts';

const UMC = '2013 California Mechanical Code (UMC 2012); NFPA 54-2012 10.21';
const BOILER = 'New York 12 NYCRR 4-5; Maryland COMAR 09.12.01; Nevada NAC 455C; Hawaii HAR 12-223.1';
const TITLE_24 = '2013 California Energy Code';

export const PLACE_CHAPTER: Chapter = {
  title: 'Place',
  entries: [
    entry('Listed and unlisted clearance, hot surfaces, base, room to service', UMC, [
      'siting/umc-2012',
      'place.clearance',
      'place.unlisted-clearance',
      'place.hot-surfaces',
      'place.base-height',
      'place.service-room',
    ]),
    entry(
      'Canada: property line, deck, wall, flue from openings, yearly service',
      'CSA B149.1 7.25 and 8.14.10, as quoted',
      [
        'siting/b149-outdoor-pool-heater',
        'place.property-line',
        'place.not-under-deck',
        'place.wall-mounted',
        'place.finned-tube-enclosure',
        'place.yearly-service',
        'air.flue-from-openings',
      ],
    ),
    entry(
      'Ignition over a garage floor, propane container',
      'IFGC 305.3; NFPA 58 Table 6.3.4.3, from memory',
      ['siting/from-memory', 'place.ignition-height', 'place.propane-tank'],
    ),
    entry(
      'Propane container’s relief from an opening below it',
      'NFPA 58 Table 6.3.4.3, from memory',
      [],
      'A distance between the container and the house, not the heater: the supplier’s.',
    ),
    entry('Bypass where none is built in', UMC, ['water.bypass-line']),
    entry(
      'Venting means of an outdoor heater; direct-vent exempt from air and location rules',
      UMC,
      ['air.vent-suits'],
      'What the maker supplies with an outdoor heater is looked at on the job.',
    ),
    entry(
      'Condensate drain: slope and size',
      'IFGC 307; IMC 307.2, from memory',
      [],
      'Not built: the condensate of a condensing heater has no rule of its own yet.',
    ),
    entry('Pipe for later solar', TITLE_24, ['water.solar-pipe']),
    entry('Outdoor clearances of the trade', 'common practice, no source', [
      'place.usual-clearance',
      'place.air-conditioner',
      'place.not-under-deck',
    ]),
  ],
};

export const RELIEF_CHAPTER: Chapter = {
  title: 'Relief, limits and energy',
  entries: [
    entry('Relief: wanted, capacity, setting, discharge', `${UMC}; ${BOILER}`, [
      'relief/steam',
      'relief/pressures',
      'water.relief-valve',
      'water.relief-capacity',
      'water.relief-setting',
      'water.relief-discharge',
      'water.relief-discharge-end',
    ]),
    entry(
      'Relief: least and greatest size, half inch to 15,000 Btu/h, no valve before it',
      BOILER,
      [],
      'The size follows from the capacity stamped on the valve, which is checked; a valve between is seen on the job.',
    ),
    entry(
      'Plumbing relief at 150 psi, vacuum breaker, backflow of the fill',
      'UPC 603 and 608',
      [],
      'The potable side of the fill line: plumber’s work that no heater changes.',
    ),
    entry(
      'Heating boiler limits, flow switch in place of low-water cutoff',
      'ASME IV and CSD-1, from memory; UMC 1009',
      ['water.boiler-inspection', 'water.flow-proving'],
    ),
    entry(
      'Greatest temperature of spa and pool',
      'California Building Code 3138B.2; UL 1563; ISPSC from memory',
      ['relief/hottest-spa', 'heat.not-too-hot'],
    ),
    entry(
      'Velocity, turnover, filtration flow, system curve',
      `California Building Code 31B; ${TITLE_24}; ISPSC`,
      [
        'pool-rules/printed-limits',
        'pool-rules/turnover',
        'pool-rules/pump-test-heads',
        'water.pipe-velocity',
        'water.turnover',
      ],
    ),
    entry(
      'Straight pipe before the pump, loss of an elbow, backwash valve',
      TITLE_24,
      ['pool-rules/printed-limits'],
      'Rules on new pool piping: the loss of the pipe as built is computed, its layout is not judged.',
    ),
    entry('No standing pilot', `${TITLE_24}; IECC C404`, ['heat.no-pilot']),
    entry('Heater listed, flow and back-siphon as instructed, controls barred', 'ISPSC 316, from memory', [
      'place.listed',
      'place.controls-barred',
      'water.heater-flow',
      'power.run-on',
    ]),
    entry(
      'Test arithmetic of pool heaters and least efficiency',
      '10 CFR 430 appendix P and 430.32(k), from memory',
      [
        'efficiency/appendix-p-cases',
        'efficiency/minima',
        'heat.efficiency-least',
        'heat.integrated-efficiency',
      ],
    ),
    entry(
      'Sampling of the represented efficiency',
      '10 CFR 429.24',
      [],
      'What a maker may print, from several units of a model; one heater on a pad gives no sample.',
    ),
    entry(
      'Electric heaters’ integrated efficiency',
      '88 FR 34624, from memory',
      [],
      'The program is about gas-fired heaters.',
    ),
    entry('Pool cover', 'ASHRAE 90.1 and IECC, from memory', ['heat.cover']),
  ],
};
