/** Figures and tables of the made pages, rounded so that the last bits of another machine do not change them. */

export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

/** Whole per cents. */
export const wholePercent = (share: number): string => `${Math.round(share * 100)} %`;

/** Two digits. */
export function percent(share: number): string {
  if (share < 1e-9) return '0 %';
  return `${Number((share * 100).toPrecision(2))} %`;
}

/** A tenth of a per cent, and never 100 while something is missing. */
export function sharePercent(part: number, whole: number): string {
  if (whole === 0) return '';
  if (part === whole) return '100 %';
  return `${Math.min(99.9, (part / whole) * 100).toFixed(1)} %`;
}

/** Four digits. */
export const figure = (x: number): string => String(Number(x.toPrecision(4)));

/** Two digits, from one on: how often the band. */
export const times = (ofBand: number): string => `${Number(ofBand.toPrecision(2))} ×`;
