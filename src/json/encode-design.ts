import type { RecordedEntry } from '../formula/index.js';
import type { Amount, Kind, KindOf } from '../quantity/index.js';
import { isKind } from '../quantity/units/index.js';
import { formulaById } from '../registry/index.js';
import type { DesignParts, RepairDesign } from '../repair/design/design.js';
import { safeSide } from '../repair/design/safe-side.js';
import { type EndOfLife, endOfLife } from '../repair/end-of-life.js';
import {
  type AmountOptions,
  type Declared,
  type EncodedAmount,
  encodeDeclared,
  encodeQuantity,
  encodeResults,
} from './encode-amount.js';
import { encodeCase } from './encode-case.js';
import type { LookUp } from './look-up.js';
import type { TypedMap } from './typed.js';

/** How a design is written out, and what its case said beside its numbers. */
export interface DesignEncoding extends AmountOptions {
  /** Texts as they were typed, for the case inside. */
  readonly typed?: TypedMap | undefined;
  /** Rows of tables that the document named. */
  readonly lookUps?: readonly LookUp[] | undefined;
}

/**
 * Writes a design as plain JSON. Each quantity becomes `{ value, unit, kind }`; the case becomes the document that it came
 * from, so that it can be designed again. Of a repair that was designed the end of its life stands beside it.
 *
 * @param design made or not
 * @param options units and digits, and what the document of the case said beside it
 */
export function encodeDesign(design: RepairDesign, options: DesignEncoding = {}): Record<string, unknown> {
  const { case: repairCase, record, ...rest } = design;
  const { typed, lookUps } = options;
  const encoded = encodeMembers(rest, designKinds, options) as Record<string, unknown>;
  const { verdict, reasons, missing, ...others } = encoded;
  return {
    verdict,
    reasons,
    missing,
    case: encodeCase({ case: repairCase, typed, lookUps }),
    ...others,
    ...(design.verdict === 'designed' ? { endOfLife: encodeMembers(endOfLife(design), endOfLifeKinds, options) } : {}),
    ...(record === undefined ? {} : { record: record.map((entry) => encodeEntry(entry, options)) }),
  };
}

type Member<T, K extends PropertyKey> = T extends unknown ? (K extends keyof T ? T[K] : never) : never;

type KeysOf<T> = T extends unknown ? keyof T : never;

/** Whether a type holds a quantity anywhere. */
type Holds<T> = T extends number
  ? [KindOf<T>] extends [never]
    ? never
    : true
  : T extends readonly (infer Row)[]
    ? Holds<Row>
    : T extends object
      ? { [K in keyof T]-?: Holds<NonNullable<T[K]>> }[keyof T]
      : never;

/**
 * The kind of every quantity of a type, by its place. A design is plain numbers at run time, so its kinds are written down
 * here; the compiler refuses this file until each quantity that a design gains has its kind.
 */
type KindsOf<T> = [T] extends [number]
  ? KindOf<T>
  : [T] extends [readonly (infer Row)[]]
    ? KindsOf<Row>
    : {
        [K in KeysOf<T> as [Holds<NonNullable<Member<T, K>>>] extends [never] ? never : K]-?: KindsOf<
          NonNullable<Member<T, K>>
        >;
      };

const mixKinds = {
  volume: 'volume',
  area: 'area',
  mass: 'mass',
  base: 'mass',
  hardener: 'mass',
  batchMass: 'mass',
} as const;
const cureKinds = {
  workingTime: 'time',
  law: {
    wait: 'time',
    requiredTime: 'time',
    referenceTemperature: 'temperature',
    minimumTemperature: 'temperature',
    testedFrom: 'temperature',
    testedTo: 'temperature',
    activationEnergy: 'activation energy',
  },
} as const;
const durationKinds = { time: 'time', atLeast: 'time' } as const;
const takesKinds = { time: 'time', atLeast: 'time', goodFor: 'time' } as const;

const designKinds: KindsOf<DesignParts> = {
  found: {
    outsideDiameter: 'length',
    hoopStressSound: 'stress',
    hoopStressThinned: 'stress',
    outsidePressure: 'gauge pressure',
    soilPressure: 'gauge pressure',
    wallToday: 'length',
    wallAtEndOfLife: 'length',
    depthAtEndOfLife: 'length',
    lengthAtEndOfLife: 'length',
    widthAtEndOfLife: 'length',
    holeAtEndOfLife: 'length',
    designHole: 'length',
    slotAtEndOfLife: { axialLength: 'length', circumferentialWidth: 'length' },
    designSlot: { axialLength: 'length', circumferentialWidth: 'length' },
    strength: { safePressure: 'gauge pressure', methods: { value: 'gauge pressure' } },
  },
  laminate: {
    hoopStrain: 'strain',
    axialStrain: 'strain',
    wrappedDiameter: 'length',
    thickness: { candidates: { value: 'length' }, value: 'length' },
    alternatives: { value: 'length' },
    laidThickness: 'length',
    joints: { reach: 'length' },
    footprint: { diameter: 'length', length: 'length' },
    resistance: { candidates: { value: 'gauge pressure' }, value: 'gauge pressure' },
    thickOverThin: { pipe: 'ratio', laminate: 'ratio' },
  },
  extent: {
    meanThickness: 'length',
    overlap: { candidates: { value: 'length' }, value: 'length' },
    defectLength: 'length',
    taper: 'length',
    totalLength: 'length',
    insideLength: 'length',
  },
  wrap: {
    fullCountLength: 'length',
    overallLength: 'length',
    tapeLength: 'length',
    sheetLength: 'length',
    sheetArea: 'area',
    finalLap: 'length',
    leftOnLastRoll: 'length',
    insideOverlap: 'ratio',
  },
  line: { pressure: 'gauge pressure', highestPressure: 'gauge pressure' },
  mixes: { filler: mixKinds, laminateResin: mixKinds },
  cures: { putty: cureKinds, filler: cureKinds, laminate: cureKinds },
  timeline: {
    steps: { takes: takesKinds, startsAt: 'time', endsAt: 'time', duration: durationKinds, slack: 'time' },
    earliestReturn: durationKinds,
  },
  seal: {
    padDiameter: 'length',
    forceOnPad: 'force',
    forceOnHole: 'force',
    fastenerTension: 'force',
    torque: 'moment',
    strapStress: 'stress',
    contactPressure: 'gauge pressure',
    bandLength: 'length',
    highestPressure: 'gauge pressure',
    endLoadNotCarried: 'force',
    jet: { reaction: 'force', speed: 'speed', volumeFlow: 'volume flow', massFlow: 'mass flow' },
  },
  site: {
    dewPoint: 'temperature',
    highestDewPoint: 'temperature',
    margin: 'temperature difference',
    steelNeeded: 'temperature',
    humidityAtSteel: 'ratio',
    holdTime: durationKinds,
    earliestStart: 'time',
    requiredProfile: 'length',
  },
  rolls: {
    start: 'length',
    end: 'length',
    beforeDefect: 'length',
    stagger: 'length',
    passes: { from: 'length', to: 'length', tapeLength: 'length', begins: 'length', width: 'length' },
    rolls: { length: 'length', endsAt: 'length', time: 'time' },
    chargeLength: 'length',
    workingTime: 'time',
    allowedTime: 'time',
    chargeTime: 'time',
    wrapTime: 'time',
    remedies: { longestCharge: 'length', coolerThan: 'temperature', coolerHour: 'time' },
  },
  acceptance: {
    leastThickness: 'length',
    leastOverlap: 'length',
    highestWrinkle: 'length',
    pressureTest: {
      pressure: 'gauge pressure',
      resistance: 'gauge pressure',
      hold: 'time',
      volume: 'volume',
      waterToAdd: 'volume',
      testTemperature: 'temperature',
      pressurePerKelvin: 'gauge pressure',
      storedEnergy: 'energy',
      tntEquivalent: 'mass',
      distance: 'length',
    },
  },
};

const endOfLifeKinds: KindsOf<EndOfLife> = {
  life: 'time',
  wallLasts: { time: 'time', until: 'length' },
  inspectWithin: 'time',
  inspections: { after: 'time', leastWall: 'length' },
};

type Kinds = Kind | { readonly [name: string]: Kinds };

function encodeMembers(value: unknown, kinds: Kinds | undefined, options: AmountOptions, name = ''): unknown {
  if (Array.isArray(value)) return value.map((row) => encodeMembers(row, kinds, options, name));
  if (typeof value === 'number' && typeof kinds === 'string')
    return encodeQuantity(kinds, name, value, options, safeSide(name));
  if (typeof value !== 'object' || value === null) return value;
  if (isAmount(value)) return { name: value.name, ...encodeAmount(value, options) };
  return Object.fromEntries(
    Object.entries(value).map(([key, member]) => {
      const own = typeof kinds === 'object' && Object.hasOwn(kinds, key) ? kinds[key] : undefined;
      return [key, encodeMembers(member, own, options, UNNAMED.has(key) ? name : key)];
    }),
  );
}

/** A number of a reason or a warning knows its side itself, or by its name. */
function encodeAmount(amount: Amount, options: AmountOptions): EncodedAmount {
  const { kind, name, value, toward = safeSide(name) } = amount;
  return isKind(kind)
    ? encodeQuantity(kind, name, value, options, toward)
    : encodeDeclared(amount, name, value, options);
}

/** Members that are called by what holds them: neither the unit nor the side of a thickness hangs on the word "value". */
const UNNAMED: ReadonlySet<string> = /* @__PURE__ */ new Set(['value', 'candidates', 'time', 'atLeast']);

function isAmount(value: object): value is Amount {
  return 'name' in value && 'kind' in value && 'value' in value && typeof value.value === 'number';
}

function encodeEntry(entry: RecordedEntry, options: AmountOptions): unknown {
  if (entry.sort === 'heading') return entry;
  if (entry.sort === 'decision') return encodeMembers(entry, undefined, options);
  const formula = formulaById(entry.formula);
  if (formula === undefined) throw new Error(`the recorded formula ${entry.formula} is not one of this library`);
  const inputs = formula.inputs as Readonly<Record<string, Declared & { readonly default?: unknown }>>;
  return {
    sort: 'step',
    formula: formula.id,
    title: formula.title,
    ...(entry.purpose === undefined ? {} : { purpose: entry.purpose }),
    inputs: Object.fromEntries(
      Object.entries(inputs).flatMap(([name, declaration]) => {
        const value = entry.input[name] ?? declaration.default;
        return value === undefined ? [] : [[name, encodeDeclared(declaration, name, value, options)]];
      }),
    ),
    results: encodeResults(formula, entry.result, options),
  };
}
