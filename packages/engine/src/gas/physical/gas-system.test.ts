import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FOOT, HOUR, INCH, INCH_OF_WATER, PSI, STANDARD_CUBIC_FOOT } from '../../quantity/index.ts';
import { expectOk, Recorder, type Step } from '../../trace/index.ts';
import { NATURAL_GAS, PROPANE } from '../fuel.ts';
import { solveGasCases } from './cases.ts';
import { explainPressure } from './explain-pressure.ts';
import { AIR_DENSITY } from './gas-state.ts';
import { compileGasSystem, type GasSystem } from './gas-system.ts';
import type { GasLink, GasLoad, GasPipe, GasRegulator, GasSystemSpec } from './system-spec.ts';

const SCFH = STANDARD_CUBIC_FOOT / HOUR;
const STEEL = 4.572e-5;
const AMBIENT = { atmosphere: 101_325, temperature: 288.15 };

function pipe(
  id: string,
  ends: readonly [string, string],
  more: Partial<GasPipe> & { inches: number },
): GasPipe {
  const { inches, ...rest } = more;
  const bore = { type: 'bore', insideDiameter: inches * INCH, roughness: STEEL } as const;
  return { type: 'pipe', id, from: ends[0], to: ends[1], bore, length: 10, ...rest };
}

const service: GasRegulator = {
  type: 'regulator',
  id: 'service',
  from: 'street',
  to: 'house',
  setPressure: 7 * INCH_OF_WATER,
  lockUpPressure: 9 * INCH_OF_WATER,
  droop: 0.5 * INCH_OF_WATER,
  capacity: 600 * SCFH,
  wideOpenDrop: 2 * PSI,
};

const load = (id: string, cfh: number, node = id): GasLoad => ({ id, node, flow: cfh * SCFH });

function spec(
  links: readonly GasLink[],
  loads: readonly GasLoad[],
  more: Partial<GasSystemSpec> = {},
): GasSystemSpec {
  return {
    fuel: NATURAL_GAS,
    ambient: AMBIENT,
    supply: { node: 'street', pressure: 30 * PSI },
    links,
    loads,
    ...more,
  };
}

const compile = (...args: Parameters<typeof spec>): GasSystem => expectOk(compileGasSystem(spec(...args)));

/** A house with two branches behind regulator and meter. */
const HOUSE: GasLink[] = [
  service,
  {
    type: 'meter',
    id: 'meter',
    from: 'house',
    to: 'supply',
    badge: 250 * SCFH,
    badgeDrop: 0.5 * INCH_OF_WATER,
  },
  pipe('main', ['supply', 'tee'], { inches: 1.38, length: 12 }),
  pipe('out', ['tee', 'heater'], { inches: 1.049, length: 15 }),
  pipe('in', ['tee', 'furnace'], { inches: 0.824, length: 8 }),
];
const LOADS = [load('heater', 150), load('furnace', 80)];

describe('the three cases', () => {
  const cases = expectOk(solveGasCases(compile(HOUSE, LOADS), ['heater']));

  it('stands at lock-up everywhere when all is off', () => {
    for (const node of ['house', 'supply', 'tee', 'heater', 'furnace'])
      expect(cases.allOff.pressure(node) / INCH_OF_WATER).toBeCloseTo(9, 6);
    expect(cases.allOff.regulator('service')).not.toBe('open');
  });

  it('falls from case to case as more runs', () => {
    const at = (node: string) =>
      [cases.heatersAlone.pressure(node), cases.everythingOn.pressure(node)] as const;
    for (const node of ['house', 'supply', 'tee', 'heater']) {
      const [alone, all] = at(node);
      expect(alone).toBeGreaterThan(all);
      expect(cases.allOff.pressure(node)).toBeGreaterThan(alone);
    }
  });

  it('loses the badge drop in the meter at its badge flow', () => {
    const full = compile(HOUSE, [load('heater', 250)]);
    const drop = expectOk(full.solve('all')).drop('meter');
    // Rated near the atmosphere; at 7 in w.c. the gas is 1.7 % denser and the loss smaller by that.
    expect(Math.abs(drop / INCH_OF_WATER - 0.5)).toBeLessThan(0.011);
  });

  it('closes mass at every junction', () => {
    const { everythingOn } = cases;
    expect(everythingOn.flow('main')).toBeCloseTo(everythingOn.flow('out') + everythingOn.flow('in'), 9);
    expect(everythingOn.flow('service') / SCFH).toBeCloseTo(230, 6);
    expect(everythingOn.taken('heater')).toBe(150 * SCFH);
    expect(everythingOn.starved).toEqual([]);
  });

  it('explains a pressure link by link, each step ending where the solution stands', () => {
    const recorder = new Recorder();
    explainPressure(cases.everythingOn, 'heater', recorder);
    const groups = recorder.steps.filter((step) => step.step === 'group');
    expect(groups.map((group) => group.about?.['link'])).toEqual(['service', 'meter', 'main', 'out']);
    for (const group of groups) {
      const last = group.children.findLast((step: Step) => step.step === 'formula');
      const shown = last?.step === 'formula' ? last.result.value : Number.NaN;
      expect(Math.abs(shown - (group.value ?? Number.NaN))).toBeLessThan(0.05);
    }
  });
});

describe('height', () => {
  const riser = (fuel: typeof NATURAL_GAS) =>
    compile([pipe('riser', ['street', 'roof'], { inches: 1, length: 20, rise: 20 })], [], {
      fuel,
      supply: { node: 'street', pressure: 1740 },
    });

  it('gives natural gas and takes from propane the weight of the column against the air’s', () => {
    for (const fuel of [NATURAL_GAS, PROPANE]) {
      const gained = expectOk(riser(fuel).solve('none')).pressure('roof') - 1740;
      const weight = (1 - fuel.specificGravity) * AIR_DENSITY * 9.80665 * 20;
      // The gas is 1.7 % denser than at the standard state, and both columns thin out by 0.2 %.
      expect(Math.abs(gained / weight - 1)).toBeLessThan(fuel.name === 'natural' ? 0.03 : 0.06);
    }
  });

  it('does not depend on the way round a loop, which must close', () => {
    const sides = (rise: number): GasLink[] => [
      pipe('a', ['street', 'top'], { inches: 1, rise: 5 }),
      pipe('b', ['street', 'back'], { inches: 1 }),
      pipe('c', ['back', 'top'], { inches: 1, rise }),
    ];
    expect(
      compileGasSystem(spec(sides(5), [load('top', 10)], { supply: { node: 'street', pressure: 2000 } })).ok,
    ).toBe(true);
    const open = compileGasSystem(spec(sides(6), []));
    expect(open.ok ? '' : open.issues[0]?.reason).toBe('loop-does-not-close');
  });
});

describe('stages', () => {
  it('runs a 2 psi line to a line regulator', () => {
    const links: GasLink[] = [
      { ...service, setPressure: 2 * PSI, lockUpPressure: 2.3 * PSI, droop: 0.1 * PSI },
      pipe('line', ['house', 'pad'], { inches: 0.622, length: 60 * FOOT }),
      {
        type: 'regulator',
        id: 'line regulator',
        from: 'pad',
        to: 'heater',
        setPressure: 8 * INCH_OF_WATER,
        lockUpPressure: 10 * INCH_OF_WATER,
        droop: INCH_OF_WATER,
        capacity: 350 * SCFH,
        wideOpenDrop: 0.5 * PSI,
      },
    ];
    const system = compile(links, [load('heater', 350)]);
    const cases = expectOk(solveGasCases(system, ['heater']));
    expect(cases.allOff.pressure('heater') / INCH_OF_WATER).toBeCloseTo(10, 5);
    expect(cases.allOff.pressure('pad') / PSI).toBeCloseTo(2.3, 5);
    expect(cases.everythingOn.pressure('heater') / INCH_OF_WATER).toBeCloseTo(7, 3);
    expect(cases.everythingOn.regulator('line regulator')).toBe('holding');
    expect(cases.everythingOn.drop('line')).toBeGreaterThan(0.1 * PSI);
  });

  it('runs two-stage propane from a tank, and opens wide when the tank is too cold', () => {
    const stage = (id: string, from: string, to: string, more: Partial<GasRegulator>): GasRegulator => ({
      ...service,
      id,
      from,
      to,
      capacity: 200 * SCFH,
      ...more,
    });
    const links = [
      stage('first', 'tank', 'yard', {
        setPressure: 10 * PSI,
        lockUpPressure: 12 * PSI,
        droop: PSI,
        wideOpenDrop: 3 * PSI,
      }),
      pipe('yard line', ['yard', 'wall'], { inches: 0.66, length: 30 }),
      stage('second', 'wall', 'heater', {
        setPressure: 11 * INCH_OF_WATER,
        lockUpPressure: 13 * INCH_OF_WATER,
      }),
    ];
    const at = (psi: number) =>
      compile(links, [load('heater', 150)], { fuel: PROPANE, supply: { node: 'tank', pressure: psi * PSI } });
    const warm = expectOk(at(60).solve('all'));
    expect(warm.regulator('first')).toBe('holding');
    expect(warm.pressure('heater') / INCH_OF_WATER).toBeCloseTo(11 - 0.5 * 0.75, 2);
    const cold = expectOk(at(6).solve('all'));
    expect(cold.regulator('first')).toBe('open');
    expect(cold.pressure('yard')).toBeLessThan(6 * PSI);
  });
});

describe('a line that cannot carry its load', () => {
  const system = compile(
    [pipe('thin', ['street', 'heater'], { inches: 0.622, length: 40 })],
    [load('heater', 250), load('idle', 50, 'heater')],
    { supply: { node: 'street', pressure: 7 * INCH_OF_WATER } },
  );

  it('says which load starves, and shows the pressure a gauge would find', () => {
    const solution = expectOk(system.solve(['heater']));
    expect(solution.starved).toEqual(['heater']);
    expect(solution.pressureAtLoad('heater')).toBeGreaterThan(0);
    expect(solution.pressureAtLoad('heater')).toBeLessThan(3.5 * INCH_OF_WATER);
    // The orifice relation: flow by the root of pressure over manifold pressure.
    const part = Math.sqrt(solution.pressureAtLoad('heater') / (3.5 * INCH_OF_WATER));
    expect(solution.taken('heater') / (250 * SCFH)).toBeCloseTo(part, 5);
    expect(solution.flow('thin')).toBeCloseTo(solution.taken('heater'), 9);
  });

  it('recovers in the next case', () => {
    expect(expectOk(system.solve((id) => (id === 'heater' ? 0.1 : 0))).starved).toEqual([]);
  });
});

describe('what cannot be laid out', () => {
  const reason = (links: readonly GasLink[], loads: readonly GasLoad[] = []): unknown => {
    const system = compileGasSystem(spec(links, loads));
    return system.ok ? 'none' : [system.issues[0]?.where, system.issues[0]?.reason ?? system.issues[0]?.code];
  };

  it.each([
    ['a pipe tied to nothing', [...HOUSE, pipe('lost', ['x', 'y'], { inches: 1 })], ['x', 'cut-off']],
    [
      'a pipe of negative length',
      [pipe('p', ['street', 'a'], { inches: 1, length: -1 })],
      ['p.length', 'out-of-range'],
    ],
    ['an id used twice', [...HOUSE, pipe('main', ['tee', 'z'], { inches: 1 })], ['main', 'id-twice']],
    ['lock-up below set', [{ ...service, lockUpPressure: 100 }], ['service.lockUpPressure', 'out-of-range']],
    [
      'a size no table has',
      [
        {
          ...pipe('p', ['street', 'a'], { inches: 1 }),
          bore: { type: 'corrugated', ehd: 20, tables: [] },
        } as GasPipe,
      ],
      ['p.ehd', 'no-such-size'],
    ],
  ] as const)('%s', (_name, links, expected) => {
    expect(reason(links)).toEqual(expected);
  });

  it('a load on a junction that is not there', () => {
    expect(reason(HOUSE, [load('heater', 10, 'nowhere')])).toEqual(['nowhere', 'cut-off']);
  });

  it('a load behind a shut valve, named when it is asked to run', () => {
    const shut = HOUSE.map((link) => (link.id === 'out' ? { ...link, closed: true } : link));
    const solved = compile(shut, LOADS).solve('all');
    expect(solved.ok ? '' : solved.issues[0]).toMatchObject({ where: 'heater', reason: 'cut-off' });
  });
});

describe('properties', () => {
  const inches = fc.constantFrom(0.622, 0.824, 1.049, 1.38, 1.61);
  const tree = fc.array(
    fc.record({
      bore: inches,
      length: fc.integer({ min: 1, max: 25 }),
      cfh: fc.integer({ min: 0, max: 30 }),
      hang: fc.nat(100),
    }),
    { minLength: 2, maxLength: 12 },
  );
  type Twig = { bore: number; length: number; cfh: number; hang: number };

  const links = (twigs: readonly Twig[]): GasLink[] => [
    service,
    ...twigs.map(({ bore, length, hang }, i) =>
      pipe(`p${i}`, [i === 0 ? 'house' : `n${hang % i}`, `n${i}`], { inches: bore, length }),
    ),
  ];
  const loads = (twigs: readonly Twig[]): GasLoad[] => twigs.map(({ cfh }, i) => load(`l${i}`, cfh, `n${i}`));
  /** Pressures at full flow; where a burner starves, easing one takes gas from another, and nothing is claimed. */
  const pressures = (twigs: readonly Twig[], extra: readonly GasLink[] = []): number[] => {
    const solution = expectOk(compile([...links(twigs), ...extra], loads(twigs)).solve('all'));
    fc.pre(solution.starved.length === 0);
    return twigs.map((_, i) => solution.pressure(`n${i}`));
  };

  it('a bigger pipe never lowers a pressure of a tree', () => {
    fc.assert(
      fc.property(tree, fc.nat(100), (twigs, which) => {
        const bigger = twigs.map((twig, i) =>
          i === which % twigs.length ? { ...twig, bore: twig.bore * 1.3 } : twig,
        );
        const before = pressures(twigs);
        pressures(bigger).forEach((pressure, i) => {
          expect(pressure).toBeGreaterThanOrEqual((before[i] ?? 0) - 0.02);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('more load never raises a pressure, with a loop too', () => {
    fc.assert(
      fc.property(tree, fc.nat(100), (twigs, which) => {
        const loop = [pipe('loop', ['n0', `n${twigs.length - 1}`], { inches: 0.824, length: 9 })];
        const more = twigs.map((twig, i) =>
          i === which % twigs.length ? { ...twig, cfh: twig.cfh + 15 } : twig,
        );
        const before = pressures(twigs, loop);
        pressures(more, loop).forEach((pressure, i) => {
          expect(pressure).toBeLessThanOrEqual((before[i] ?? 0) + 0.02);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('mass closes, starved or not', () => {
    fc.assert(
      fc.property(tree, fc.integer({ min: 1, max: 8 }), (twigs, times) => {
        const heavy = twigs.map((twig) => ({ ...twig, cfh: twig.cfh * times }));
        const solution = expectOk(compile(links(heavy), loads(heavy)).solve('all'));
        const taken = heavy.reduce((sum, _, i) => sum + solution.taken(`l${i}`), 0);
        expect(Math.abs(solution.flow('service') - taken)).toBeLessThan(1e-6 * Math.max(taken, 1e-6));
        expect(solution.pressures.every((pressure) => Number.isFinite(pressure))).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});
