import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isCalculationError } from '../../src/formula/index.js';
import { decodeCase } from '../../src/json/index.js';
import { type Length, length } from '../../src/quantity/index.js';
import { admitWhole, inBounds, shapeFor } from '../../src/repair/case/admit.js';
import type { RepairCase } from '../../src/repair/case/case.js';
import { writtenPlace } from '../../src/repair/case/place.js';
import { caseTable } from '../../src/repair/case/table.js';
import type { AmountField, Field, Fields } from '../../src/repair/case/table-field.js';
import { designRepair } from '../../src/repair/index.js';
import { pipeSize } from '../../src/tables.js';
import { exampleDocument, exampleNames } from '../json/examples.js';
import { changed, fullCases, type Loose, type Path } from '../json/full-document.js';

const settings = { seed: 20261125, numRuns: 60 };

/** A number of a case: where it stands, and its field. */
interface Amount {
  readonly path: Path;
  readonly field: AmountField & { readonly usual: readonly [number, number] };
}

/** Every number of a case that has a usual span. */
function amountsIn(field: Field, held: Loose, path: Path = []): Amount[] {
  if (held === undefined || held === 'none') return [];
  switch (field.kind) {
    case 'block':
      return amountsOf(field.fields, held, path);
    case 'variants':
      return amountsOf(field.variants[held[field.by]] ?? {}, held, path);
    case 'list':
      return held.flatMap((row: Loose, index: number) => amountsIn(field.row, row, [...path, index]));
    case 'either':
      return amountsIn(shapeFor(field, held) as Field, held, path);
    default:
      return 'usual' in field && field.usual !== undefined ? [{ path, field: field as Amount['field'] }] : [];
  }
}

function amountsOf(fields: Fields, held: Loose, path: Path): Amount[] {
  return Object.entries(fields).flatMap(([key, field]) => amountsIn(field, held[key], [...path, key]));
}

const whole: Field = { kind: 'block', fields: caseTable };
const writtenPath = (path: Path): string =>
  path
    .reduce<string>((before, key) => (typeof key === 'number' ? `${before}[${key}]` : `${before}.${key}`), '')
    .slice(1);

/** The paths that the door takes note of; it looks at each field by itself. */
function notedIn(repairCase: unknown): string[] {
  const noted: string[] = [];
  admitWhole(
    {
      read: (_, value) => value,
      report: (problem) => expect.unreachable(`${writtenPlace(problem.place)}: ${problem.sort}`),
      unusual: (_kind, _usual, _value, place) => noted.push(writtenPlace(place)),
    },
    caseTable,
    repairCase,
  );
  return noted;
}

/** The fields that a design warns of; `undefined` where fields contradict each other. */
function warnedIn(repairCase: RepairCase): string[] | undefined {
  try {
    return designRepair(repairCase).warnings.flatMap(({ field }) => (field === undefined ? [] : [field]));
  } catch (error) {
    if (isCalculationError(error)) return undefined;
    throw error;
  }
}

/** A case with a number drawn from each of its usual spans. */
function drawn(repairCase: RepairCase, shares: readonly number[]): Loose {
  const copy = structuredClone(repairCase) as Loose;
  for (const [index, { path, field }] of amountsIn(whole, repairCase).entries()) {
    const value = within(field, shares[index % shares.length] ?? 0);
    let holder = copy;
    for (const key of path.slice(0, -1)) holder = holder[key];
    holder[path.at(-1) ?? ''] = value;
  }
  return copy;
}

/** The number that lies so far along the usual span. */
function within({ kind, usual: [least, most] }: Amount['field'], share: number): number {
  const value = Math.min(most, least + (most - least) * share);
  return kind === 'count' ? Math.floor(value) : value;
}

/** Numbers just outside the usual span that the hard bounds still take. */
function justOutside({ field }: Amount): number[] {
  const [least, most] = field.usual;
  const step = field.kind === 'count' ? 1 : (most - least) * 1e-6;
  return [least - step, most + step].filter((value) => inBounds(field, value));
}

describe('a case inside the usual spans', () => {
  it('is taken note of nowhere, whatever each number is', () => {
    for (const [, repairCase] of fullCases()) {
      const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 150, maxLength: 150 });
      fc.assert(
        fc.property(shares, (each) => {
          expect(notedIn(drawn(repairCase, each))).toEqual([]);
        }),
        settings,
      );
    }
  });

  it('has no warning by a field in any example of the docs, and passes strictly', () => {
    for (const name of exampleNames) {
      const { case: repairCase } = decodeCase(exampleDocument(name));
      expect(warnedIn(repairCase), name).toEqual([]);
      expect(designRepair(repairCase, { strict: true }).verdict).toBe(designRepair(repairCase).verdict);
    }
  });

  it('has no warning by a field for one number drawn from its span', () => {
    const sizes = ['1/2', '2', '6', '12', '24', '48'].map((nps) => pipeSize({ nps, schedule: 'STD' }).outsideDiameter);
    const [[, repairCase] = []] = fullCases();
    // The size has its own draw, and two numbers that may be swapped are taken note of beside each other.
    const others = /^pipe\.outsideDiameter$|\.parts\.(?:base|hardener)$|^loads\.soil\.(?:cover|waterAbove)$/;
    const amounts = amountsIn(whole, repairCase).filter(({ path }) => !others.test(writtenPath(path)));
    let designs = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(...amounts),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.constantFrom(...sizes),
        (amount, share, size) => {
          const sized = changed(repairCase, ['pipe', 'outsideDiameter'], size);
          const warned = warnedIn(changed(sized, amount.path, within(amount.field, share)));
          if (warned !== undefined) designs += 1;
          expect(warned ?? []).toEqual([]);
        },
      ),
      { ...settings, numRuns: 300 },
    );
    expect(designs).toBeGreaterThan(150);
  });
});

describe('a number just outside its usual span', () => {
  it('is taken note of by its path, for every number of a case and either end that the hard bounds leave open', () => {
    for (const [, repairCase] of fullCases()) {
      for (const amount of amountsIn(whole, repairCase))
        for (const value of justOutside(amount))
          expect(notedIn(changed(repairCase, amount.path, value))).toEqual([writtenPath(amount.path)]);
    }
  });

  it('is warned of by its path in a design, unless it contradicts another field', () => {
    const warned = new Set<string>();
    for (const [, repairCase] of fullCases()) {
      for (const amount of amountsIn(whole, repairCase)) {
        for (const value of justOutside(amount)) {
          const path = writtenPath(amount.path);
          const fields = warnedIn(changed(repairCase, amount.path, value));
          if (fields === undefined) continue;
          expect(fields).toContain(path);
          warned.add(path);
        }
      }
    }
    expect(warned.size).toBeGreaterThan(100);
  });

  it.each([
    ['a nut factor of 0.06', { 'seal.fastener.nutFactor': 0.06 }],
    [
      'factors of 1',
      { 'seal.band.factor': 1, 'seal.band.holdingFactor': 1, 'seal.sheet.factor': 1, 'seal.pipeFactor': 1 },
    ],
    ['a safety factor of 1', { 'assessment.safetyFactor': 1 }],
    ['no error of a thermometer', { 'site.instruments.temperatureError': 0 }],
  ])('is warned of on the unsafe side: %s', (_, changes) => {
    const [[, repairCase] = []] = fullCases();
    let unsafe = repairCase as Loose;
    for (const [path, value] of Object.entries(changes)) unsafe = changed(unsafe, path.split('.'), value);
    expect(warnedIn(unsafe)?.sort()).toEqual(Object.keys(changes).sort());
  });
});

describe('strictly', () => {
  const [[, repairCase] = []] = fullCases();
  const strict = (path: string, value: number) => () =>
    designRepair(changed(repairCase, path.split('.'), value), { strict: true });

  it('a strange number is refused by its path, with the span', () => {
    expect(strict('seal.fastener.nutFactor', 0.06)).toThrow(
      'seal.fastener.nutFactor is 0.06; must be within the usual 0.1 to 0.4 where a case is held strictly',
    );
  });

  it('a diameter near no size is refused with the nearest', () => {
    expect(strict('pipe.outsideDiameter', length.mm(84.15))).toThrow(
      'pipe.outsideDiameter is 0.08415 m; must be near a size of ASME B36.10M, of which NPS 3 is the nearest',
    );
  });
});

describe('a diameter near no size', () => {
  const [[, repairCase] = []] = fullCases();
  const warningOf = (given: { outsideDiameter?: Length; circumference?: Length }) => {
    const pipe = { ...(repairCase as Loose).pipe, outsideDiameter: undefined, ...given };
    return designRepair({ ...(repairCase as RepairCase), pipe }).warnings.find(({ field }) =>
      field?.startsWith('pipe.'),
    );
  };

  it('is warned of once, also where it follows from the circumference, by the field that was given', () => {
    expect(warningOf({ outsideDiameter: length.mm(185) })?.field).toBe('pipe.outsideDiameter');
    const measured = warningOf({ circumference: length.mm(185 * Math.PI) });
    expect(measured?.field).toBe('pipe.circumference');
    expect(measured?.text).toContain('is {0}, a diameter of {1}, not near');
  });

  it('is none where the circumference is that of a size', () => {
    expect(warningOf({ circumference: length.mm(219.1 * Math.PI) })).toBeUndefined();
  });
});
