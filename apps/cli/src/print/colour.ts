/** Colour on a terminal only; the word beside it always says the same. */
import type { Verdict } from '@firstfire/reference';

const CODES: Readonly<Record<Verdict | 'not built' | 'dim' | 'bold', string>> = {
  fails: '1;31',
  unknown: '35',
  tight: '33',
  meets: '32',
  'does not apply': '2',
  'not built': '2',
  dim: '2',
  bold: '1',
};

export type Paint = (text: string, as: keyof typeof CODES) => string;

export function painter(colour: boolean): Paint {
  return (text, as) => (colour ? `\u001b[${CODES[as]}m${text}\u001b[0m` : text);
}
