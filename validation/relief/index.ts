/** Relief valves: what the boiler rules of several states print. */
import { evaluate, quantity, relief } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Case, Suite } from '../suite.ts';

const { BTU, FAHRENHEIT_STEP, HOUR, POUND, PSI } = quantity;

const steam: Suite = {
  id: 'relief/steam',
  area: 'relief',
  kind: 'published',
  document: '12 NYCRR 4-5.3(a) and HAR 12-223.1-9',
  at: 'relief capacity as steam: greatest output over 1000 Btu/lb',
  quantity: 'lb of steam an hour',
  band: { relative: 1e-9 },
  bandBecause: 'the same rule in other units',
  cases: [100_000, 400_000].map((output) => ({
    id: `${output} Btu/h`,
    published: output / 1000,
    computed: () => {
      const found = evaluate(relief.reliefSteam, { heatInput: (output * BTU) / HOUR });
      return found.ok ? (found.value * HOUR) / POUND : found;
    },
  })),
};

type PressureRule = typeof relief.fullFirePressure;

function at(rule: PressureRule, psi: number): Case['computed'] {
  return () => {
    const found = evaluate(rule, { workingPressure: psi * PSI });
    return found.ok ? found.value / PSI : found;
  };
}

const pressures: Suite = {
  id: 'relief/pressures',
  carried: true,
  area: 'relief',
  kind: 'published',
  document: '12 NYCRR 4-5.3(a); COMAR 09.12.01.13 C; NAC 455C.232',
  at: 'rise at full fire; setting of further valves',
  quantity: 'over the working pressure: share in %, or psi, as each case says',
  band: { absolute: 1e-6 },
  bandBecause: 'the same rule in other units',
  cases: [
    { id: '30 psi, rise, %', published: 20, computed: () => share(relief.fullFirePressure, 30) },
    { id: '50 psi, rise, %', published: 10, computed: () => share(relief.fullFirePressure, 50) },
    { id: '60 psi, further valve, psi above', published: 6, computed: () => above(60) },
    { id: '75 psi, further valve, %', published: 10, computed: () => share(relief.furtherValveSetting, 75) },
  ],
};

function share(rule: PressureRule, psi: number): number {
  const found = at(rule, psi)();
  return typeof found === 'number' ? 100 * (found / psi - 1) : Number.NaN;
}

function above(psi: number): number {
  const found = at(relief.furtherValveSetting, psi)();
  return typeof found === 'number' ? found - psi : Number.NaN;
}

const hottest: Suite = {
  id: 'relief/hottest-spa',
  carried: true,
  area: 'relief',
  kind: 'published',
  document: 'California Building Code 3138B.2; UL 1563 32.1',
  at: 'greatest temperature of spa water',
  quantity: '°F or °C, as each case says',
  band: { absolute: 1e-6 },
  bandBecause: 'the two figures are one temperature',
  cases: [
    {
      id: '°F',
      published: 104,
      computed: () => catalog.water.WARMEST_WATER.temperature / FAHRENHEIT_STEP - 459.67,
    },
    { id: '°C', published: 40, computed: () => catalog.water.WARMEST_WATER.temperature - 273.15 },
  ],
};

export const RELIEF_SUITES: readonly Suite[] = [steam, pressures, hottest];
