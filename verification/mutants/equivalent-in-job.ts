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
];
