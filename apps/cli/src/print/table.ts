/** Columns side by side, left-aligned, two spaces apart. */
export function columns(rows: readonly (readonly string[])[], indent = ''): string {
  const widths: number[] = [];
  for (const row of rows) {
    row.forEach((cell, index) => {
      widths[index] = Math.max(widths[index] ?? 0, cell.length);
    });
  }
  const line = (row: readonly string[]): string =>
    (indent + row.map((cell, index) => cell.padEnd(widths[index] ?? 0)).join('  ')).trimEnd();
  return rows.map(line).join('\n');
}

/** Breaks a text at spaces so that no line is longer than `width`, where a word allows it. */
export function wrap(text: string, width: number, indent: string): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && indent.length + line.length + 1 + word.length > width) {
      lines.push(indent + line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, indent + line].join('\n');
}
