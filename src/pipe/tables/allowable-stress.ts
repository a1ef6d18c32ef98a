import { refuse, type SourceTag } from '../../formula/index.js';
import { frozen } from '../../numeric/frozen.js';
import { type Stress, stress, type Temperature, temperature } from '../../quantity/index.js';
import { interpolate } from './interpolate.js';
import type { TableValue } from './table-value.js';

/** Temperature in degC, allowable stress in MPa, and the tag of the entry. */
type Entry = readonly [degC: number, MPa: number, tag: SourceTag];

/** Specification, minimum yield and tensile strength in MPa, entries, and what to know before using the row. */
interface Row {
  readonly yieldMPa: number;
  readonly tensileMPa: number;
  readonly entries: readonly Entry[];
  readonly note?: string;
}

const steady = (MPa: number, warm: SourceTag = 'secondary'): readonly Entry[] => [
  [40, MPa, 'secondary'],
  [65, MPa, warm],
  [100, MPa, warm],
  [150, MPa, warm],
  [200, MPa, warm],
];

const HIGHER_LINE =
  'The higher of two lines for this steel: it accepts a slight lasting deformation, so it does not suit flanged joints.';

const rows: ReadonlyMap<string, Row> = /* @__PURE__ */ new Map<string, Row>([
  ['ASTM A106 B seamless', { yieldMPa: 241, tensileMPa: 414, entries: /* @__PURE__ */ steady(138) }],
  ['ASTM A53 B seamless', { yieldMPa: 241, tensileMPa: 414, entries: /* @__PURE__ */ steady(138, 'recalled') }],
  [
    'ASTM A53 B ERW',
    {
      yieldMPa: 241,
      tensileMPa: 414,
      entries: /* @__PURE__ */ steady(138, 'recalled'),
      note: 'Without the joint factor: multiply by E = 0.85.',
    },
  ],
  [
    'API 5L B',
    {
      yieldMPa: 241,
      tensileMPa: 414,
      entries: /* @__PURE__ */ steady(138),
      note: 'Without the joint factor of welded pipe.',
    },
  ],
  ['API 5L X42', { yieldMPa: 290, tensileMPa: 414, entries: /* @__PURE__ */ steady(138) }],
  ['API 5L X46', { yieldMPa: 317, tensileMPa: 434, entries: /* @__PURE__ */ steady(145) }],
  ['API 5L X52', { yieldMPa: 359, tensileMPa: 455, entries: /* @__PURE__ */ steady(152) }],
  ['API 5L X56', { yieldMPa: 386, tensileMPa: 490, entries: /* @__PURE__ */ steady(163) }],
  ['API 5L X60', { yieldMPa: 414, tensileMPa: 517, entries: /* @__PURE__ */ steady(172) }],
  ['API 5L X65', { yieldMPa: 448, tensileMPa: 531, entries: /* @__PURE__ */ steady(177) }],
  ['API 5L X70', { yieldMPa: 483, tensileMPa: 565, entries: /* @__PURE__ */ steady(188) }],
  ['API 5L X80', { yieldMPa: 552, tensileMPa: 621, entries: /* @__PURE__ */ steady(207) }],
  [
    'ASTM A312 TP304 seamless',
    {
      yieldMPa: 207,
      tensileMPa: 517,
      entries: [
        [40, 138, 'secondary'],
        [65, 138, 'secondary'],
        [100, 138, 'secondary'],
        [125, 138, 'secondary'],
        [150, 138, 'secondary'],
        [175, 134, 'secondary'],
        [200, 129, 'secondary'],
      ],
      note: HIGHER_LINE,
    },
  ],
  [
    'ASTM A312 TP304L seamless',
    {
      yieldMPa: 172,
      tensileMPa: 483,
      entries: [
        [40, 115, 'secondary'],
        [65, 115, 'secondary'],
        [100, 115, 'secondary'],
        [150, 115, 'secondary'],
      ],
    },
  ],
  [
    'ASTM A312 TP316 seamless',
    {
      yieldMPa: 207,
      tensileMPa: 517,
      entries: [
        [40, 138, 'secondary'],
        [65, 138, 'recalled'],
        [100, 138, 'recalled'],
        [125, 138, 'recalled'],
        [150, 138, 'recalled'],
        [200, 134, 'recalled'],
      ],
      note: HIGHER_LINE,
    },
  ],
  [
    'ASTM A312 TP316L seamless',
    {
      yieldMPa: 172,
      tensileMPa: 483,
      entries: [
        [40, 115, 'secondary'],
        [65, 115, 'secondary'],
        [100, 115, 'secondary'],
        [125, 115, 'secondary'],
        [150, 115, 'secondary'],
        [175, 113, 'secondary'],
        [200, 109, 'secondary'],
      ],
    },
  ],
]);

/** The rows that `allowableStress` knows; the caller names one, none is ever picked. */
export const allowableStressRows: readonly string[] = /* @__PURE__ */ frozen([.../* @__PURE__ */ rows.keys()]);

/** An allowable stress, and the strengths that its row lists. */
export interface AllowableStress extends TableValue<Stress> {
  /** Row of the table, by its specification. */
  readonly row: string;
  /** Specified minimum yield strength [Pa]. */
  readonly yieldStrength: Stress;
  /** Specified minimum tensile strength [Pa]. */
  readonly tensileStrength: Stress;
}

/**
 * Allowable stress of a named row of B31.3 Table A-1M at a temperature, linear between its entries.
 *
 * These are second-hand numbers, in part recalled, for a first look: a design takes S from the code in force.
 *
 * @param row         one of `allowableStressRows`, named by the caller
 * @param metalTemperature temperature of the metal [K], from the first to the last entry of the row
 * @throws CalculationError `invalid-input` for another row, `outside-validity` outside the entries
 */
export function allowableStress(row: string, metalTemperature: Temperature): AllowableStress {
  const found = rows.get(row);
  if (found === undefined) {
    const constraint = `must be one of ${allowableStressRows.join(', ')}`;
    refuse({ code: 'invalid-input', parameter: 'row', value: row, unit: '', constraint });
  }
  const points = found.entries.map(([celsius, MPa, tag]) => ({
    temperature: temperature.degC(celsius),
    value: MPa,
    tag,
  }));
  const advice =
    '; the first column of the code reaches down to the least temperature of the material, which is not held here: where that is met, ask for the first entry';
  const { value, tag } = interpolate(points, metalTemperature, advice, 'ASME B31.3, Table A-1M');
  return {
    value: stress.MPa(value),
    tag,
    source: { key: 'asme-b31-3', locator: 'Table A-1M' },
    row,
    yieldStrength: stress.MPa(found.yieldMPa),
    tensileStrength: stress.MPa(found.tensileMPa),
    ...(found.note === undefined ? {} : { note: found.note }),
  };
}
