import { alike, type Equivalent } from './alike.js';

/** Changes of the frame of the job that no case can tell from the original. */

const at = (file: string): string => `src/repair/job/${file}.ts`;

export const equivalentInJob: readonly Equivalent[] = [
  ...alike(
    at('conclude'),
    'a repair that is designed has every part and no reason; what is left out holds this library to that, and no case fails it',
    [
      ["verdict !== 'designed'", 'true'],
      [
        // biome-ignore lint/suspicious/noTemplateCurlyInString: source text.
        '{ if (part === open) throw new Error(`the part "${name}" of the design stayed open and nothing says why: a fault of this library`); }',
        '{}',
      ],
      ['part === open', 'false'],
    ],
  ),
  ...alike(at('own-rules'), 'a rule that nobody has read has no number that could be confirmed', [
    ["!('value' in rule)", 'false'],
  ]),
  ...alike(at('own-rules'), 'what is not said to be less conservative is passed over, a text too', [
    ['[]', '["Stryker was here"]'],
  ]),
  ...alike(at('rule-set'), 'with nothing to confirm the rules come out as they went in, after a longer way', [
    ['confirmed.length === 0', 'false'],
  ]),
  ...alike(at('slips'), 'the word "none" is no number, and so none that is too small', [["value === 'none'", 'false']]),
  ...alike(at('refusal-line'), 'a limit that is not from above is from below: the formulas know no third', [
    ['/\\b(?:at least|above|reach|more than|longer than)\\b/u.test(before)', 'true'],
  ]),
  ...alike(at('refusal-line'), 'what is called a pressure is in pascals wherever a formula refuses it', [
    ["unit === 'Pa'", 'true'],
  ]),
  ...alike(at('workbook'), 'refusals are read where there is no result', [['[]', '["Stryker was here"]']]),
  ...alike('src/repair/asked/called.ts', 'the word "none" is no number, and so none above 0', [
    ["externalPressure !== 'none'", 'true'],
  ]),
  ...alike('src/repair/asked/titled.ts', 'what is not there counts as no', [['() => false', '() => undefined']]),
  ...alike(
    'src/repair/as-built/rating.ts',
    'a laminate thicker than planned on its whole overlap holds the design pressure',
    [
      ['laid.overlap < requiredOverlap', 'true'],
      ['laid.overlap < requiredOverlap', 'laid.overlap <= requiredOverlap'],
    ],
  ),
  ...alike(
    'src/repair/as-built/pressure-test.ts',
    'a test whose highest pressure nobody recorded is not shown already',
    [['made.highestPressure === undefined', 'false']],
  ),
  ...alike('src/repair/case/contradictions.ts', 'no day is later than one that is not there', [
    ['survey !== undefined', 'true'],
  ]),
  ...alike('src/repair/timeline/plan-timeline.ts', 'a step waits for a material only where one is laid', [
    ["cures[takes.cure] !== 'none'", 'true'],
  ]),
];
