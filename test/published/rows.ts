import { describe, expect, test } from 'vitest';

/** A published or agreed figure, with all that is needed to check it and to know where it is from. */
export type PublishedRow = {
  claim: string;
  /** What goes in, each figure with its unit in its name. */
  inputs: Readonly<Record<string, number | string | readonly number[]>>;
  got: () => number;
  expected: number;
  tolerance: { within: number; unit: string; because: string };
  source: string;
};

/** A tolerance of nothing, for figures that hold by definition or are counts. */
export const exactly = (unit: string, because: string) => ({ within: 0, unit, because });

const withInputs = ({ claim, inputs, source }: PublishedRow): string => {
  const given = Object.entries(inputs).map(([name, input]) => `${name} ${input}`);
  return `${claim}${given.length === 0 ? '' : ` (${given.join(', ')})`}: ${source}`;
};

/** Checks each row, its source in its title, and that every one of the `count` rows was checked. */
export function publishedRows(name: string, count: number, rows: readonly PublishedRow[]): void {
  describe(name, () => {
    const checked = new Set<string>();
    test.each(rows.map((row) => [withInputs(row), row] as const))('%s', (title, { got, expected, tolerance }) => {
      checked.add(title);
      const off = Math.abs(got() - expected);
      expect(off, `off by ${off} ${tolerance.unit}; ${tolerance.because}`).toBeLessThanOrEqual(tolerance.within);
    });

    test(`all ${count} rows of ${name} were checked`, () => {
      expect(checked.size).toBe(count);
    });
  });
}
