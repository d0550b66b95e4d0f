import { expect, it } from 'vitest';
import { Columns } from './columns.ts';

it('cuts columns that are zero, that do not touch each other, and that go on when the memory is used up', () => {
  const columns = new Columns(64);
  const made = [
    columns.flags(3),
    columns.numbers(2),
    columns.integers(3),
    columns.numbers(40),
    columns.flags(1),
  ];
  made.forEach((column, i) => {
    expect([...column].every((value) => value === 0)).toBe(true);
    column.fill(i + 1);
  });
  expect(made.map((column) => column.length)).toEqual([3, 2, 3, 40, 1]);
  for (const [i, column] of made.entries()) expect([...column].every((value) => value === i + 1)).toBe(true);
});
