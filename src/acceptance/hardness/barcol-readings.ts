import { formula, oneOf, refuse, within } from '../../formula/index.js';
import type { IndentedMaterial } from './hardness-readings.js';

export interface BarcolReadingsInput {
  readonly hardness: number;
  readonly material?: IndentedMaterial | undefined;
}

/** Readings that bring the mean to one variance, by hardness: about 0.28 in resin, about 0.78 in laminate. */
const rows: Readonly<Record<IndentedMaterial, readonly (readonly [hardness: number, readings: number])[]>> = {
  homogeneous: [
    [20, 9],
    [30, 8],
    [40, 7],
    [50, 6],
    [60, 5],
    [70, 4],
    [80, 3],
  ],
  reinforced: [
    [30, 29],
    [40, 22],
    [50, 16],
    [60, 10],
    [70, 5],
  ],
};

/**
 * Barcol readings that are needed for a mean of even precision.
 *
 * @param input.hardness H, mean hardness on the Barcol scale, from the first row of the table up to 100
 * @param input.material homogeneous resin or reinforced laminate; `reinforced`, which needs more, when not given
 * @returns number of readings
 * @throws CalculationError `invalid-input`; `outside-validity` below the first row, 20 for resin and 30 for laminate
 * @remarks Between two rows the softer one counts, as it needs more readings; above the last row its number stays.
 * @see ASTM D2583, table 1, as recalled
 */
export function barcolReadings(input: BarcolReadingsInput): number {
  const { hardness: H, material = 'reinforced' } = input;
  within(H, 0, 100, 'hardness', '');
  oneOf(material, ['homogeneous', 'reinforced'], 'material');
  let needed = 0;
  for (const [hardness, readings] of rows[material]) if (H >= hardness) needed = readings;
  if (needed === 0) belowTable(H, Math.min(...rows[material].map(([hardness]) => hardness)));
  return needed;
}

function belowTable(value: number, first: number): never {
  refuse({
    code: 'outside-validity',
    parameter: 'hardness',
    value,
    unit: '',
    constraint: `must be at least ${first}, where the table of readings begins; use the indenter for softer material`,
    source: 'ASTM D2583, table 1, as recalled',
  });
}

export const barcolReadingsFormula = /* @__PURE__ */ formula<BarcolReadingsInput, number>({
  id: 'acceptance/barcol-readings',
  title: 'Barcol readings needed',
  compute: barcolReadings,
  equation: {
    algorithm: 'Readings in the row of the table whose hardness is the highest that the mean hardness reaches.',
  },
  inputs: {
    hardness: { symbol: 'H', kind: 'number', name: 'mean Barcol hardness', sample: [20, 100] },
    material: {
      symbol: 'material',
      kind: 'choice',
      name: 'what the indenter meets',
      choices: ['homogeneous', 'reinforced'],
      default: 'reinforced',
    },
  },
  output: { symbol: 'n', kind: 'count', name: 'readings needed' },
  sources: [{ key: 'astm-d2583', locator: 'table 1' }],
  evidence: {
    form: { tag: 'recalled', derived: 'variance of one reading over that of the mean, 0.28 or 0.78' },
    reinforced: { tag: 'recalled', note: 'rows of reinforced material are a weak memory' },
  },
  limits: [{ sort: 'stop', text: 'Nothing below the first row of the table: 20 for resin, 30 for laminate.' }],
});
