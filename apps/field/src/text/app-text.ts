/** Everything the app says: words of the reader's language, figures in the reader's units and marks. */
import type { quantity } from '@firstfire/engine';
import type { Finding } from '@firstfire/reference';
import {
  type FigureIn,
  figureIn,
  figureText,
  fill,
  marginText,
  outcomeText,
  type Reader,
  type Slots,
  sourceText,
  subjectText,
  unitsOf,
} from '@firstfire/words';
import type { Column } from '../columns/column.ts';

export class AppText {
  readonly reader: Reader;

  constructor(reader: Reader) {
    this.reader = reader;
  }

  /** A phrase of the app; the key itself where there is none, which a check finds. */
  phrase(key: string, slots: Slots = {}): string {
    return fill(this.#words.phrases[`app.${key}`] ?? key, slots);
  }

  line(line: string): string {
    return this.#words.lines[line] ?? line;
  }

  verdict(verdict: Column['shape']): string {
    return this.#words.verdicts[verdict] ?? verdict;
  }

  rule(id: string): { readonly title: string; readonly asks: string; readonly mend?: string } {
    return this.#words.rules[id] ?? { title: id, asks: '' };
  }

  subject(finding: Finding): string {
    return subjectText(finding.subject, this.#words);
  }

  source(finding: Finding): string {
    return sourceText(finding.source, this.reader.speech);
  }

  /** Required and found. */
  outcome(finding: Finding): string {
    return outcomeText(finding, unitsOf(finding, this.reader));
  }

  /** Signed per cent, rounded towards worse; empty where there is no margin. */
  margin(finding: Finding): string {
    return marginText(finding, this.reader.speech);
  }

  /** A margin by itself, as the list of jobs has it. */
  percent(margin: number | undefined): string {
    return marginText({ ...(margin === undefined ? {} : { margin }), verdict: 'meets' }, this.reader.speech);
  }

  /** A value in the usual unit of its kind. */
  show(value: number, kind: quantity.Kind, medium: 'gas' | 'water' = 'water'): string {
    return figureText(value, kind, { ...this.reader, medium });
  }

  /** A value in a unit that was chosen. */
  quantity(si: number, figure: FigureIn): string {
    return figureIn(si, figure, this.reader.speech);
  }

  /** A unit as the reader writes it. */
  unit(unit: string): string {
    return unit === '1'
      ? ''
      : unit
          .replace(/^deg/, '°')
          .replace('ft3', 'ft³')
          .replace('ft2', 'ft²')
          .replace('in2', 'in²')
          .replace('m3', 'm³')
          .replace('m2', 'm²');
  }

  /** A word of a choice. */
  choice(value: string): string {
    return this.#words.choices[value] ?? value;
  }

  /** Where a reading is found and how it is taken; undefined where nobody has said it yet. */
  help(collection: string, field: string): string | undefined {
    return this.#words.help[`${collection}.${field}`];
  }

  /** What a collection is called. */
  record(collection: string): string {
    return this.#words.readings[collection] ?? collection;
  }

  /** A reading by record and field: `gas supply: lock-up pressure`. */
  path(path: string): string {
    const [collection = '', , field = ''] = path.split('/');
    return this.phrase('record-field', {
      record: this.record(collection),
      field: this.field(collection, field),
    });
  }

  field(collection: string, field: string): string {
    return this.#words.readings[`${collection}.${field}`] ?? field;
  }

  /** What stands under a column. */
  columnFigure({ shape, unknown, worst }: Column): string {
    if (shape === 'unknown') return `? ${unknown}`;
    if (worst === undefined) return '–';
    return this.margin(worst) || (worst.verdict === 'fails' ? '×' : '✓');
  }

  /** What someone who listens hears besides what stands there. */
  columnSpoken({ worst, unknown }: Column): string {
    const parts = worst === undefined ? [] : [this.rule(worst.rule).title];
    if (unknown > 0) parts.push(this.phrase('unknown-count', { count: unknown }));
    return parts.join(', ');
  }

  get #words() {
    return this.reader.speech.words;
  }
}
