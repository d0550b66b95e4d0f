/** Numbers as weather files write them: plain decimals, nothing that a language would add to them. */

const LONGEST_NUMBER = 32;

/** The number a field holds; undefined for a blank one, NaN for what is not a plain decimal number. */
export function fieldNumber(field: string | undefined): number | undefined {
  const text = field?.trim() ?? '';
  if (text === '') return undefined;
  if (text.length > LONGEST_NUMBER || !/^[+-]?[0-9.]+([eE][+-]?[0-9]+)?$/.test(text)) return Number.NaN;
  const value = Number(text);
  return Number.isFinite(value) ? value : Number.NaN;
}
