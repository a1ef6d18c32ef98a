import { describe, expect, it } from 'vitest';
import {
  compareAsBuilt,
  type Designed,
  designRepair,
  planWork,
  type RepairCase,
  type RepairDesign,
} from '../../src/repair/index.js';
import { wholeCase } from '../../verification/laws/whole-case.js';
import { seeded } from '../../verification/oracles/random.js';
import { caseOf } from '../faults/answers.js';
import {
  emptyLeak,
  evenLoss,
  leak,
  live,
  loss,
  type Paths,
  quietLoss,
  withPaths,
  yieldedLoss,
} from '../faults/cases.js';
import { goodRecord } from '../faults/records.js';
import { planned, plannedLeak, waterTape } from './plan-cases.js';

/** What every answer keeps, whatever became of it: it is plain data, and each of its sentences has its numbers. */

const broken: readonly Paths[] = [
  { 'service.designPressure': '300 bar' },
  { 'laminate.strainToFailure': undefined, 'laminate.glassTransition': undefined },
  { 'laminate.hoopExpansion': '150e-6 1/K' },
  { 'defect.kind': 'dent' },
  { 'loads.bendingMoment': '1 kN m' },
  { 'site.pipeTemperature': '5 degC', 'site.airTemperature': '4 degC' },
  { 'service.hazards': ['flammable', 'toxic'], 'service.phase': 'gas' },
  { 'loads.axialForce': '4000 kN' },
  { 'site.forecast': undefined, crew: undefined, acceptance: undefined },
  live('30 bar'),
];
const cases = (): readonly RepairCase[] => [
  planned,
  plannedLeak,
  waterTape,
  ...[leak, loss, emptyLeak, quietLoss, evenLoss, yieldedLoss].map(caseOf),
  ...[quietLoss, loss].flatMap((file) => broken.map((changes) => caseOf(withPaths(file, changes)))),
  ...(['substrate sharing load', 'substrate yielded', 'long-term strength'] as const).map(
    (method): RepairCase => ({ ...planned, repair: { ...planned.repair, method } }),
  ),
  ...Array.from({ length: 24 }, (_, draw) => wholeCase(seeded('plain data', draw))),
];
const designsOf = (): readonly RepairDesign[] => cases().map((each) => designRepair(each, { record: true }));
const isMade = (design: RepairDesign): design is Designed => design.verdict === 'designed';

interface Found {
  readonly path: string;
  readonly value: unknown;
}

function* membersOf(value: unknown, path = ''): Generator<Found> {
  yield { path, value };
  if (typeof value !== 'object' || value === null) return;
  for (const [key, member] of Object.entries(value)) yield* membersOf(member, `${path}.${key}`);
}

/** Every member of all that is said: the case, the options that were given, and the record apart. */
function everything(): Found[] {
  const designs = designsOf();
  const made = designs.filter(isMade);
  expect(new Set(designs.map(({ verdict }) => verdict)).size).toBe(4);
  expect(made.length).toBeGreaterThan(20);
  const answers: readonly object[] = [
    ...designs.map(({ case: _, options: __, record: ___, ...answer }) => answer),
    ...made.map((design) => planWork(design)),
    ...made.map((design) => compareAsBuilt(design, goodRecord(design))),
    ...made.map((design) => compareAsBuilt(design, {})),
  ];
  return answers.flatMap((answer) => [...membersOf(answer)]);
}

describe('an answer', () => {
  it('is plain data without a hole, in the words of people, with every number that its sentences mark', () => {
    const all = everything();
    expect(holesIn(all)).toEqual([]);
    expect(badAmountsIn(all)).toEqual([]);
    expect(badSentencesIn(all)).toEqual([]);
  });
});

/** Members that are undefined, numbers that are none, objects without a member. */
function holesIn(all: readonly Found[]): readonly Found[] {
  return all.filter(({ path, value }) => {
    // A maker that gives no energy of activation gives none.
    if (value === undefined) return !path.endsWith('.law.activationEnergy');
    if (typeof value !== 'object') return Number.isNaN(value);
    return value !== null && !Array.isArray(value) && Object.keys(value).length === 0;
  });
}

const isWord = (word: unknown): boolean => typeof word === 'string' && word !== '';

/** Amounts without a name, a kind or a number. */
function badAmountsIn(all: readonly Found[]): readonly object[] {
  const amounts = all.flatMap(({ path, value }) => {
    const isAmount = /(?:.\.found|.\.limit|\.shortfall|\.amount|\.amounts\.\d+)$/u.test(path);
    if (!isAmount || typeof value !== 'object' || value === null || 'text' in value || 'word' in value) return [];
    return [{ path, ...(value as { name?: unknown; kind?: unknown; value?: unknown }) }];
  });
  expect(amounts.length).toBeGreaterThan(500);
  return amounts.filter(({ name, kind, value }) => !isWord(name) || !isWord(kind) || !Number.isFinite(value));
}

/** Sentences that mark an amount they do not have, that have amounts and mark none, or that speak as a machine does. */
function badSentencesIn(all: readonly Found[]): readonly string[] {
  const bad: string[] = [];
  let marked = 0;
  for (const { path, value } of all) {
    if (typeof value === 'string' && /undefined|NaN|\[object|Infinity/u.test(value)) bad.push(`${path}: ${value}`);
    if (typeof value !== 'object' || value === null || !('text' in value) || typeof value.text !== 'string') continue;
    const marks = [...value.text.matchAll(/\{(\d+)\}/gu)].map(([, mark]) => Number(mark));
    const amounts = 'amounts' in value && Array.isArray(value.amounts) ? value.amounts : [];
    if (Math.max(-1, ...marks) >= amounts.length || marks.includes(0) !== amounts.length > 0)
      bad.push(`${path}: ${value.text}`);
    marked += marks.length;
  }
  expect(marked).toBeGreaterThan(100);
  return bad;
}

describe('a design', () => {
  it('assumes each value once, asks for each field once, warns of each thing once and lists each rule once', () => {
    const once = (keys: readonly string[]): void => expect(keys).toEqual([...new Set(keys)]);
    for (const { assumed, missing, warnings } of designsOf()) {
      once(assumed.map(({ amount }) => amount.name));
      once(missing.map(({ field }) => field));
      once(warnings.map(({ text, step }) => `${step}: ${text}`));
    }
  });

  it('that shares its load with the pipe lists the number of Poisson that it took for steel', () => {
    const shared = designRepair({ ...planned, repair: { ...planned.repair, method: 'substrate sharing load' } });
    const poisson = shared.assumed.filter(({ amount }) => amount.name === "Poisson's ratio of the pipe");
    expect(poisson.map(({ amount }) => amount)).toEqual([
      { name: "Poisson's ratio of the pipe", kind: 'number', value: 0.3 },
    ]);
  });

  it('keeps a record of plain steps, each with what it was given', () => {
    const steps = designsOf().flatMap(({ record = [] }) => record.filter((entry) => entry.sort === 'step'));
    expect(steps.filter(({ input, result }) => Object.keys(input).length === 0 || result === undefined)).toEqual([]);
    expect(steps.length).toBeGreaterThan(1000);
  });
});
