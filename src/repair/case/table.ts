import { sourceTags } from '../../formula/index.js';
import { assessment, defect, loads } from './table-defect.js';
import type { Fields, HeldBy } from './table-field.js';
import { filler, laminate, resin, wrap } from './table-materials.js';
import { pipe, service } from './table-pipe.js';
import { acceptance, crew, line, seal, site } from './table-work.js';

const repair = {
  class: { kind: 'choice', words: [1, 2, 3] },
  life: { kind: 'time', above: 0, usual: [6e5, 1.3e9] },
  method: {
    kind: 'choice',
    optional: true,
    words: ['substrate ignored', 'substrate sharing load', 'substrate yielded', 'long-term strength'],
  },
  loading: { kind: 'choice', optional: true, words: ['rare', 'continuous'] },
  leakFactorByFormula: { kind: 'flag', optional: true },
  availableOverlap: { kind: 'length', optional: true, above: 0, usual: [0.01, 5] },
} as const satisfies Fields;

/** The kind and the bounds of the value are those of the number at its path. */
const confirmed = {
  path: { kind: 'text' },
  value: { kind: 'number' },
  by: { kind: 'text' },
  edition: { kind: 'text' },
  note: { kind: 'text', optional: true },
} as const satisfies Fields;

const lookedUp = {
  name: { kind: 'text' },
  kind: { kind: 'choice', words: ['length', 'stress'] },
  value: { kind: 'number' },
  tag: { kind: 'choice', words: sourceTags },
  because: { kind: 'text' },
} as const satisfies Fields;

/**
 * What a case is, field by field: kind, hard bounds, whether it must be there, what waits for it, and where the values of real jobs lie.
 * Both doors, the schema, the sentences of a refusal, the rows of the sheet and the field tables of the docs read it; what
 * each field says to people stands beside it in `words.ts`. Numbers are in SI. The usual spans are `chosen`.
 */
export const caseTable = {
  title: { kind: 'text' },
  reference: { kind: 'text', optional: true },
  date: { kind: 'text', optional: true },
  note: { kind: 'text', optional: true },
  basis: { kind: 'choice', words: ['ISO 24817', 'ASME PCC-2'] },
  pipe: { kind: 'block', fields: pipe },
  service: { kind: 'block', fields: service },
  line,
  defect: { kind: 'block', fields: defect },
  loads: { kind: 'block', fields: loads },
  fitting: { kind: 'choice', words: ['none', 'bend', 'tee', 'reducer', 'flange', 'nozzle', 'weld'] },
  assessment: { kind: 'block', optional: true, fields: assessment },
  repair: { kind: 'block', fields: repair },
  laminate: { kind: 'block', fields: laminate },
  wrap,
  resin: { kind: 'block', none: true, fields: resin },
  filler: { kind: 'block', none: true, fields: filler },
  site: { kind: 'block', fields: site },
  seal: { kind: 'block', optional: true, needed: 'for numbers', fields: seal },
  crew: { kind: 'block', optional: true, fields: crew },
  acceptance: { kind: 'block', optional: true, fields: acceptance },
  confirmed: { kind: 'list', optional: true, row: { kind: 'block', fields: confirmed } },
  lookedUp: { kind: 'list', optional: true, row: { kind: 'block', fields: lookedUp } },
} as const satisfies Fields;

/** A case as the table has it: a test holds it equal to `RepairCase`. */
export type CaseByTable = HeldBy<typeof caseTable>;
