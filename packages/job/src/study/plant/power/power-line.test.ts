import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { workingOf } from '../../findings/working.ts';
import { figureOf, findingOf, type Survey, studyOf, viewOf, withFields } from '../water/example-loop.ts';

const { gaugeOf, INCH } = quantity;

/** One heater on a circuit of 12 AWG in the table's own air, all as it should be. */
const CIRCUIT: Survey = {
  site: { country: 'US', region: 'CO', altitude: 'drawing 0 ft', singleFamily: 'yes' },
  heaters: [
    {
      id: 'h1',
      name: 'Heater',
      planned: 'yes',
      fuel: 'natural',
      volts: 'nameplate 240 V',
      amperes: 'nameplate 4 A',
      runOnLeast: 'nameplate 0 min',
    },
  ],
  spots: [{ id: 's1', heater: 'h1', where: 'outdoors', waterEdge: 'measured 20 ft' }],
  circuits: [
    {
      id: 'c1',
      heater: 'h1',
      selector: '240',
      voltsIdle: 'measured 241 V',
      voltsRunning: 'measured 236 V',
      runningCurrent: 'measured 10 A',
      startCurrent: 'measured 40 A',
      breaker: 'drawing 20 A',
      otherLoad: 'measured 0 A',
      metal: 'copper',
      conductor: 'drawing #12 AWG',
      insulation: '75',
      terminals: '75',
      ambient: 'measured 30 °C',
      inRaceway: 'drawing 3',
      length: 'measured 100 ft',
      equipmentGround: 'drawing #12 AWG',
      burialMethod: 'nonmetallic raceway',
      burialPlace: 'yard',
      cover: 'measured 18 in',
      burialFromPool: 'measured 12 ft',
    },
  ],
};

const circuit = (fields: Readonly<Record<string, unknown>>): Survey =>
  withFields(CIRCUIT, 'circuits/c1', fields);
const verdict = (survey: Survey, rule: string): string => findingOf(studyOf(survey), `power.${rule}`).verdict;

describe('the wire', () => {
  // Table 310.16: 12 AWG carries 20, 25 and 30 A; 60 °C terminals hold it to 20.
  it.each([
    [{ insulation: '60' }, 20],
    [{ insulation: '75' }, 25],
    [{ insulation: '90' }, 25],
    [{ insulation: '90', terminals: '90' }, 30],
    [{ insulation: '90', terminals: '60' }, 20],
    // Table 310.15(B)(1), from memory: 0.88 at 40 °C; 310.15(C)(1): 0.8 of four to six conductors.
    [{ ambient: 'measured 40 °C' }, 25 * 0.8819],
    [{ inRaceway: 'drawing 6' }, 25 * 0.8],
  ])('carries, with %o, %d A', (fields, amperes) => {
    expect(figureOf(circuit(fields), 'power.wire-carries-load')).toBeCloseTo(amperes, 2);
  });

  // 240.4(D): 15 A for 14 AWG, 20 for 12, 30 for 10; 240.4(B): the next standard size above 50 A is 50, above 44.1 is 45.
  it.each([
    [{ conductor: 'drawing #14 AWG' }, 15],
    [{}, 20],
    [{ conductor: 'drawing #10 AWG' }, 30],
    [{ conductor: 'drawing #8 AWG' }, 50],
    [{ conductor: 'drawing #8 AWG', ambient: 'measured 40 °C' }, 45],
  ])('may have, with %o, a breaker of %d A', (fields, amperes) => {
    const found = findingOf(studyOf(circuit(fields)), 'power.breaker-protects-wire');
    expect(found.outcome).toMatchObject({ required: amperes });
  });

  it('of aluminium is refused, and its metal fails', () => {
    const survey = circuit({ metal: 'aluminium' });
    expect(verdict(survey, 'conductor-copper')).toBe('fails');
    expect(verdict(survey, 'wire-carries-load')).toBe('unknown');
  });

  it('of a gauge that no table holds carries nobody knows what', () => {
    expect(verdict(circuit({ conductor: 'drawing #18 AWG' }), 'wire-carries-load')).toBe('unknown');
  });

  it('in air as hot as its insulation carries nothing that can be told', () => {
    expect(verdict(circuit({ ambient: 'measured 80 °C' }), 'wire-carries-load')).toBe('unknown');
  });

  it('tells which usual values stand in for what nobody read', () => {
    const bare = circuit({ insulation: undefined, terminals: undefined, ambient: undefined });
    const { assumed } = findingOf(studyOf(bare), 'power.wire-carries-load');
    expect(assumed).toEqual(['circuits/c1/ambient', 'circuits/c1/insulation', 'circuits/c1/terminals']);
  });
});

describe('the equipment ground', () => {
  const least = (fields: Readonly<Record<string, unknown>>): number => {
    const { outcome } = findingOf(studyOf(circuit(fields)), 'power.equipment-ground');
    return outcome?.sense === 'at-least' ? gaugeOf(outcome.required) : Number.NaN;
  };

  // Table 250.122: 14 AWG for 15 A, 12 for 20; 250.122(B): 8 AWG beside 8 AWG where 12 AWG would do.
  it('follows the breaker, and conductors that are larger than it needs', () => {
    expect(least({})).toBeCloseTo(12, 9);
    expect(least({ breaker: 'drawing 15 A', conductor: 'drawing #14 AWG' })).toBeCloseTo(14, 9);
    expect(least({ conductor: 'drawing #8 AWG' })).toBeCloseTo(8, 9);
    expect(least({ breaker: 'drawing 15 A' })).toBeCloseTo(12, 9);
  });

  it('is not known beside a breaker that no conductor of the tables fits', () => {
    expect(verdict(circuit({ breaker: 'drawing 400 A' }), 'equipment-ground')).toBe('unknown');
  });
});

describe('the voltage', () => {
  // By hand: 1.98 ohm a thousand feet, stranded; 2 × 4 A × 0.198 ohm = 1.584 V of 241.
  it('drops by what the table gives', () => {
    expect(figureOf(CIRCUIT, 'power.voltage-drop')).toBeCloseTo(1.584 / 241, 6);
    const three = circuit({ phases: '3', otherLoad: 'measured 12 A' });
    expect(figureOf(three, 'power.voltage-drop')).toBeCloseTo((Math.sqrt(3) * 16 * 0.198) / 241, 6);
  });

  // By hand: (241 − 236)/10 A = 0.5 ohm; 241 − 40 × 0.5 = 221 V.
  it('at start follows from two readings and two currents', () => {
    expect(figureOf(CIRCUIT, 'power.voltage-at-start')).toBeCloseTo(221, 9);
  });

  it('that rises under load is a contradiction, and nothing follows from it', () => {
    const survey = circuit({ voltsRunning: 'measured 246 V' });
    expect(verdict(survey, 'voltage-at-start')).toBe('unknown');
    expect(JSON.stringify(studyOf(survey).issues)).toContain('voltage-rises-under-load');
  });

  // Ratio of turns by hand: 24 × 205/240 = 20.5 V; 12.0 of 120 V on the 240 V tap, common practice, no source.
  it('of the control circuit follows the tap, unless it was measured', () => {
    const public208 = circuit({ voltsIdle: 'measured 209 V', voltsRunning: 'measured 205 V' });
    expect(figureOf(public208, 'power.control-voltage')).toBeCloseTo(20.5, 9);
    expect(verdict(public208, 'selector')).toBe('fails');
    const halved = circuit({ voltsIdle: 'measured 121 V', voltsRunning: 'measured 120 V' });
    expect(figureOf(halved, 'power.control-voltage')).toBeCloseTo(12, 9);
    const measured = circuit({ controlVolts: 'measured 25.1 V' });
    expect(figureOf(measured, 'power.control-voltage')).toBe(25.1);
  });
});

describe('buried wiring', () => {
  const least = (fields: Readonly<Record<string, unknown>>): number => {
    const { outcome } = findingOf(studyOf(circuit(fields)), 'power.burial-depth');
    return outcome?.sense === 'at-least' ? outcome.required / INCH : Number.NaN;
  };

  // Table 300.5.
  it('lies as deep as its method and its cover ask for', () => {
    expect(least({})).toBeCloseTo(18, 9);
    expect(least({ burialMethod: 'direct-buried cable' })).toBeCloseTo(24, 9);
    expect(least({ burialMethod: 'rigid metal conduit' })).toBeCloseTo(6, 9);
    expect(least({ burialPlace: 'street, driveway or car park' })).toBeCloseTo(24, 9);
    expect(verdict(circuit({ cover: 'measured 17 in' }), 'burial-depth')).toBe('fails');
  });

  it('is asked of nobody where nothing is buried', () => {
    for (const rule of ['burial-depth', 'raceway-near-pool', 'burial-near-pool']) {
      expect(verdict(circuit({ burialMethod: 'not buried', cover: undefined }), rule)).toBe('does not apply');
    }
  });

  it('within 5 ft of the pool lies in a raceway', () => {
    const close = { burialFromPool: 'measured 4 ft' };
    expect(verdict(circuit(close), 'raceway-near-pool')).toBe('meets');
    const cable = circuit({ ...close, burialMethod: 'direct-buried cable' });
    expect(verdict(cable, 'raceway-near-pool')).toBe('fails');
  });

  it('of which nobody knows asks first how it is buried', () => {
    const found = findingOf(studyOf(circuit({ burialMethod: undefined })), 'power.burial-depth');
    expect(found).toMatchObject({ verdict: 'unknown', missing: ['circuits/c1/burialMethod'] });
  });
});

describe('a reading that another decides', () => {
  it('is asked for only then', () => {
    const remote = (kind: string | undefined) =>
      findingOf(studyOf(circuit({ remote: kind })), 'power.local-limit');
    expect(remote('none').verdict).toBe('does not apply');
    expect(remote('serial').missing).toEqual(['circuits/c1/localLimit']);
    expect(remote(undefined).missing).toEqual(['circuits/c1/remote']);
  });

  it('of run-on is not asked for where the heater wants none', () => {
    expect(verdict(CIRCUIT, 'run-on')).toBe('does not apply');
    const asks = withFields(CIRCUIT, 'heaters/h1', { runOnLeast: 'nameplate 5 min' });
    expect(findingOf(studyOf(asks), 'power.run-on').missing).toEqual(['circuits/c1/runOn']);
  });

  it('of a distance counts for nothing behind a barrier', () => {
    const near = { disconnectDistance: 'measured 3 ft' };
    expect(verdict(circuit(near), 'disconnect-from-water')).toBe('fails');
    expect(verdict(circuit({ ...near, barrier: 'yes' }), 'disconnect-from-water')).toBe('does not apply');
  });
});

describe('the pool’s bonding', () => {
  it('asks for ring or grid, as the ground is bonded', () => {
    const ring: Survey = {
      ...CIRCUIT,
      bonding: { perimeter: 'copper ring', ringDistance: 'measured 20 in', ringDepth: 'measured 5 in' },
    };
    expect(verdict(ring, 'ring-distance')).toBe('meets');
    expect(verdict(ring, 'grid-pitch')).toBe('does not apply');
    const existing: Survey = { ...CIRCUIT, bonding: { perimeter: 'existing' } };
    expect(verdict(existing, 'perimeter-points')).toBe('does not apply');
  });

  // 680.26(C): 9 in².
  it('tells that the metal leaves with the old heater', () => {
    const heaters = CIRCUIT['heaters'] as readonly Readonly<Record<string, unknown>>[];
    const swap: Survey = {
      ...CIRCUIT,
      heaters: [
        { id: 'old', planned: 'no', headerMetal: 'yes' },
        ...heaters.map((one) => ({ ...one, headerMetal: 'no' })),
      ],
      bonding: { waterContact: 'measured 4 in2' },
    };
    const found = findingOf(studyOf(swap), 'power.water-bond');
    expect(found.verdict).toBe('fails');
    expect(found.outcome).toMatchObject({ because: { reason: 'metal-header-leaves' } });
  });
});

describe('the working', () => {
  it.each([
    'wire-carries-load',
    'voltage-drop',
    'voltage-at-start',
    'control-voltage',
    'burial-depth',
    'equipment-ground',
  ])('of %s has steps, and every number in them is one', (rule) => {
    const working = workingOf(viewOf(CIRCUIT), `power.${rule}@h1`, { today: '2026-11-25' });
    const steps = working?.facts.flatMap((fact) => fact.steps) ?? [];
    expect(steps.length).toBeGreaterThan(0);
    expect(JSON.stringify(steps)).not.toContain('null');
  });
});
