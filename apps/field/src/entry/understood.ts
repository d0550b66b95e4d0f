/** What a typed text means for a field: a reading, a question where two readings are possible, or what would be right. */
import { type Issue, quantity } from '@firstfire/engine';
import { HOW_KNOWN, type HowKnown, RECORD_BY_COLLECTION, type Reading } from '@firstfire/job';

export interface FieldAt {
  readonly collection: string;
  readonly id: string;
  readonly field: string;
}

/** Another text to take in place of the one typed. */
export interface Offer {
  readonly typed: string;
}

export type Understood =
  | { readonly state: 'empty' }
  | {
      readonly state: 'read';
      readonly reading: Pick<Reading, 'value' | 'unit' | 'typed'>;
      readonly si: number;
      /** Half of one unit in the last digit typed, as an SI difference. */
      readonly halfStep: number;
    }
  /** Readable in two ways, or not at all. */
  | {
      readonly state: 'odd';
      readonly issues: readonly Issue[];
      /** Where the part that was not understood stands in the text. */
      readonly part: { readonly from: number; readonly to: number };
      readonly offers: readonly Offer[];
    };

export function fieldOf({ collection, field }: FieldAt) {
  const fields = RECORD_BY_COLLECTION.get(collection)?.fields;
  return fields !== undefined && Object.hasOwn(fields, field) ? fields[field] : undefined;
}

export interface Typing {
  readonly kind: quantity.Kind;
  /** Of a bare number. */
  readonly unit: string;
  /** How the reader writes numbers. */
  readonly marks?: quantity.NumberMarks;
}

const US: quantity.NumberMarks = { decimal: '.', group: ',', groupFrom: 4, percent: '' };

/**
 * Reads a quantity as typed, with or without a unit; a bare number is in the unit given. A number written as the reader
 * writes numbers is taken at its word; any other is read where only one reading is possible, and asked about where two
 * are.
 */
export function understand(typed: string, { kind, unit, marks = US }: Typing): Understood {
  const text = typed.trim();
  if (text === '' || /^[-−+]$/.test(text)) return { state: 'empty' };
  const read = quantity.parseQuantity(text, kind, { defaultUnit: unit, decimal: marks });
  if (!read.ok) return odd(text, read.issues, marks.decimal);
  const { value, unit: found, si, halfStep } = read.value;
  const plain = `${value} ${found}`;
  const kept = text === plain || text === String(value) ? {} : { typed: text };
  return { state: 'read', si, halfStep, reading: { value, unit: found, ...kept } };
}

type ParseIssues = Extract<quantity.Parsed, { ok: false }>['issues'];

function odd(text: string, issues: ParseIssues, mark: string): Understood {
  const [first] = issues;
  const from = Math.min(first?.position ?? 0, text.length);
  const found = typeof first?.found === 'string' ? first.found : '';
  const to = found === '' ? text.length : Math.min(text.length, from + found.length);
  return { state: 'odd', issues, part: { from, to }, offers: offersOf(text, issues, mark) };
}

/** Where both readings are known, each is one tap. */
function offersOf(text: string, issues: ParseIssues, mark: string): readonly Offer[] {
  const [issue] = issues;
  if (issue === undefined || typeof issue.found !== 'string') return [];
  const { reason, position, found, expected = [] } = issue;
  const put = (part: string): Offer => ({
    typed: `${text.slice(0, position)}${part}${text.slice(position + found.length)}`,
  });
  if (reason === 'decimal-sign-unclear') return expected.map((one) => put(one.replace('.', mark)));
  if (reason === 'fraction-unclear')
    return expected.map((one) => put((one.split(' = ')[1] ?? one.replace(' ', '-')).replace('.', mark)));
  if (reason === 'letter-case-matters') return expected.map(put);
  return [];
}

export const HOW: readonly HowKnown[] = HOW_KNOWN;
