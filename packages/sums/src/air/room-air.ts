import { air, evaluate, fail, ok } from '@firstfire/engine';
import { choice, defineSum, number } from '../sum.ts';

/** Volume of a room that gives burners their air without openings. */
export const roomAir = defineSum({
  name: 'room-air',
  inputs: {
    method: choice(['standard', 'infiltration']),
    'heat-input': number('heat-rate', 'kBtu/h', { min: 0, max: 1e7 }),
    ach: number('ratio', '1', { optional: true, min: 0.05, max: 0.6 }),
    'fan-assisted': { ...choice(['yes', 'no']), optional: true, fallback: 'no' },
  },
  outputs: { volume: { kind: 'volume', unit: 'ft3' } },
  source: air.ROOM_VOLUME_SOURCE,
  example: {
    given: { method: 'standard', 'heat-input': '140 kBtu/h' },
    gives: { volume: '7000 ft3' },
    within: 1e-9,
    source: { document: 'NFPA 54-2012', at: 'annex J', known: 'read in a public copy' },
  },
  run: (x) => {
    const heatInput = x['heat-input'];
    if (x.method === 'standard') {
      const standard = evaluate(air.standardRoomVolume, { heatInput });
      return standard.ok ? ok({ volume: standard.value }) : standard;
    }
    if (x.ach === undefined) return fail({ code: 'ill-formed', where: 'ach', reason: 'input-missing' });
    const { fanAssisted, natural } = air.INFILTRATION_COEFFICIENT;
    const coefficient = x['fan-assisted'] === 'yes' ? fanAssisted : natural;
    const leaky = evaluate(air.infiltrationRoomVolume, { heatInput, airChanges: x.ach, coefficient });
    return leaky.ok ? ok({ volume: leaky.value }) : leaky;
  },
});
