/** What combustion, start-up and the service call looked for. */
import { type Chapter, entry } from './entry.ts';

const NOT_YET =
  'Diagnosis is not built: no question is asked after a fault, so that there is nothing to hold against it.';

export const COMBUSTION_CHAPTER: Chapter = {
  title: 'Combustion and lifting',
  entries: [
    entry('Efficiency by excess air and stack temperature', 'US DOE Steam Tip Sheet 4', [
      'combustion/doe-excess-air',
      'combustion/doe-efficiency-bs845',
      'combustion/doe-efficiency-balance',
    ]),
    entry(
      'Flue loss of BS 845 and of Siegert',
      'BS 845-1; 1. BImSchV, from memory',
      [
        'combustion/doe-efficiency-bs845',
        'combustion/siegert-loss',
        'combustion/siegert-greatest-carbon-dioxide',
      ],
      'Oil and town gas: the program burns natural gas and propane.',
    ),
    entry('Products, dew point, air and flue volumes', 'balanced reactions, computed apart', [
      'combustion/stoichiometry',
    ]),
    entry('Products of a cubic foot, where condensing begins, usual carbon dioxide', 'trade pages', [
      'combustion/facts',
      'air.flue-dry',
    ]),
    entry(
      'Greatest flue losses by output',
      '1. BImSchV (Germany)',
      [],
      'A German rule on space heating; no edition of it is in force where the program answers.',
    ),
    entry('Multipliers and examples of the lifting equation', 'NIOSH 94-110, from memory', [
      'handling/niosh-posture-factors',
      'handling/niosh-examples',
      'place.lift',
    ]),
  ],
};

export const SERVICE_CHAPTER: Chapter = {
  title: 'Start-up, faults, diagnosis',
  entries: [
    entry(
      'Start-up: gas pressures static and running, fuel against plate, leak and pressure test',
      'common practice, no source',
      [
        'gas.fuel-matches',
        'gas.code-pressure',
        'gas.burner-pressure-running',
        'gas.burner-pressure-lock-up',
        'gas.test-pressure',
        'gas.no-leak',
      ],
    ),
    entry(
      'Start-up: supply, sag under load, control voltage, bond, run-on, tingle',
      'common practice, no source',
      [
        'power.selector',
        'power.supply-sag',
        'power.control-voltage',
        'power.bonded',
        'power.run-on',
        'power.no-tingle',
      ],
    ),
    entry(
      'Start-up: oxygen, carbon monoxide free of air, flue loss, condensate side',
      'common practice, no source',
      ['air.flue-oxygen', 'air.co-air-free', 'air.flue-loss', 'air.flue-dry'],
    ),
    entry('Start-up: flow, rise, filter, pressure switch, exchanger inlet', 'common practice, no source', [
      'water.heater-flow',
      'water.temperature-rise',
      'water.filter-loading',
      'water.switch-setting',
      'water.switch-window',
      'water.exchanger-inlet',
    ]),
    entry('Start-up: meter clocked against the plate', 'common practice, no source', [
      'gas/clocking-training',
    ]),
    entry(
      'Start-up: igniter, flame signal, thermopile, air-proving pressure, safety chain, high limit, ground-fault trip, draught at the hood, carbon monoxide of the room',
      'common practice, no source',
      [],
      'Bands for plausibility that the maker’s figures replace; the step-by-step start-up that would ask for them is not built.',
    ),
    entry(
      'Warm-up of pool and spa an hour or a minute',
      'common practice, no source',
      ['packages/engine/src/heat/warm-up/warm-up.test.ts'],
      'The band is never used: the job’s own curve says how fast.',
    ),
    entry('Draft catalogue of some eighty faults and what each touches', 'judgement, no source', [], NOT_YET),
    entry(
      'Bayesian networks: asia, earthquake, sprinklers',
      'Lauritzen and Spiegelhalter 1988; Korb and Nicholson',
      [],
      NOT_YET,
    ),
    entry(
      'Troubleshooting by cost and probability',
      'Heckerman, Breese and Rommelse 1995; Kadane and Simon 1977; Ross',
      [],
      NOT_YET,
    ),
  ],
};
