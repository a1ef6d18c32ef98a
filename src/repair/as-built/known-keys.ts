import { refuse } from '../../formula/index.js';
import type { AsBuiltRecord } from './record.js';

/** What a record may hold, key by key; `true` where nothing more is told apart. */
type Keys<T> = T extends number | string | boolean
  ? true
  : T extends readonly (infer Row)[]
    ? Keys<Row> | true
    : { readonly [K in keyof T]-?: Keys<NonNullable<T[K]>> };

const known: Keys<AsBuiltRecord> = {
  line: { highestPressure: true },
  survey: {
    leastWall: true,
    axialLength: true,
    circumferentialWidth: true,
    hole: true,
    slot: { axialLength: true, circumferentialWidth: true },
  },
  seal: { heldDry: true, puttyWasFirm: true, bandsWereRemoved: true },
  steel: { grade: true, profile: true, salts: true, isFreeOfOil: true, hasRustBloom: true, sincePreparation: true },
  climate: { steelTemperature: true, airTemperature: true, relativeHumidity: true },
  batches: {
    number: true,
    useBefore: true,
    mixedOn: true,
    use: true,
    base: true,
    hardener: true,
    usedWithin: true,
    witnessHardness: true,
  },
  fillerWasFirm: true,
  laidOn: true,
  layers: true,
  thickness: true,
  plyThickness: true,
  length: true,
  leastOverlap: true,
  cure: { duration: true, temperature: true },
  hardness: { readings: true, hasStopped: true, scale: true },
  inspection: { findings: true, resinRichThickness: true, bondMethods: true },
  pressureTest: { lowestPressure: true, highestPressure: true, hold: true, leak: true, fall: true },
  signed: { holdPoint: true, by: true },
};

/** What somebody wrote under a name that nobody knows would else be a reading that nobody looks at. */
export function checkKeys(record: AsBuiltRecord): void {
  checkBelow(record, known, '');
}

interface Tree {
  readonly [key: string]: Tree | true;
}

function checkBelow(held: unknown, keys: Tree | true, path: string): void {
  if (keys === true || typeof held !== 'object' || held === null) return;
  if (Array.isArray(held)) {
    for (const [index, row] of held.entries()) checkBelow(row, keys, `${path}[${index}]`);
    return;
  }
  for (const [key, value] of Object.entries(held)) {
    const parameter = path === '' ? key : `${path}.${key}`;
    if (value !== undefined && !Object.hasOwn(keys, key)) {
      const constraint = `must be left out: no such field is known there, which holds ${Object.keys(keys).join(', ')}`;
      refuse({ code: 'invalid-input', parameter, value: String(value), unit: '', constraint });
    }
    checkBelow(value, keys[key] ?? true, parameter);
  }
}
