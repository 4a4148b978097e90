import { readFile } from 'node:fs/promises';

/** Two columns of numbers from a file; other lines are left out. */
export async function twoColumns(path: string): Promise<readonly [number[], number[]]> {
  const rows = (await readFile(path, 'utf8')).split(/\r?\n/).map((line) =>
    line
      .trim()
      .split(/[;\t ]+/)
      .map((one) => Number(one.replace(',', '.'))),
  );
  const numeric = rows.filter((row) => row.length === 2 && row.every(Number.isFinite));
  return [numeric.map(([x]) => x!), numeric.map(([, y]) => y!)];
}
