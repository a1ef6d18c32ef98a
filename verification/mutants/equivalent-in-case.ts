import { alike, type Equivalent, TIE } from './alike.js';

/** Changes of the doors of a case that no case can tell from the original. */

const at = (file: string): string => `src/repair/case/${file}.ts`;
const ABSENT = 'no number is above or below one that is not there';
const NONE = 'the word "none" has none of the members that are looked at';

export const equivalentInCase: readonly Equivalent[] = [
  ...alike(at('admit'), 'what is neither a number nor a text that says why is read as nothing', [
    ["typeof number === 'string'", 'true'],
  ]),
  ...alike(at('check-case'), 'a list of unusual numbers that nobody asked for is thrown away', [
    ['[]', '["Stryker was here"]'],
  ]),
  ...alike(
    at('contradictions'),
    'a line that is emptied has no pressure, and nothing is above the design pressure that is not there',
    [["atWork.state !== 'empty, dry, isolated, vented'", 'true']],
  ),
  ...alike(at('contradictions'), NONE, [
    ["fitting === 'none'", 'false'],
    ["cycles !== 'none'", 'true'],
    ["cracking === 'none'", 'false'],
  ]),
  ...alike(at('contradictions'), ABSENT, [
    ['tensileStrength !== undefined', 'true'],
    ['allowableStress !== undefined', 'true'],
    ['lowestTemperature !== undefined', 'true'],
    ['dry !== undefined && wet !== undefined', 'true'],
    ['dry !== undefined && wet !== undefined', 'dry !== undefined || wet !== undefined'],
    ['dry !== undefined', 'true'],
    ['wet !== undefined', 'true'],
  ]),
  ...alike(at('contradictions'), 'no day is a text that is not there', [['date !== undefined', 'true']]),
  ...alike(at('contradictions-defect'), 'two readings that are alike agree, and nothing is said of them', [
    ['depth > stated', 'depth >= stated'],
  ]),
  ...alike(at('contradictions-defect'), NONE, [["growth === 'none'", 'false']]),
  ...alike(at('contradictions-defect'), ABSENT, [
    [
      'holeDiameter !== undefined && holeAtEndOfLife !== undefined',
      'holeDiameter !== undefined || holeAtEndOfLife !== undefined',
    ],
    ['holeDiameter !== undefined && holeAtEndOfLife !== undefined', 'true'],
    ['holeDiameter !== undefined', 'true'],
    ['holeAtEndOfLife !== undefined', 'true'],
  ]),
  ...alike(
    at('contradictions-texts'),
    'a line that is emptied has no procedure, and nothing is said of a text that is not there',
    [["atWork.state !== 'empty, dry, isolated, vented'", 'true']],
  ),
  ...alike(at('contradictions-texts'), NONE, [
    ["protection !== 'none'", 'true'],
    ["cracking !== 'none'", 'true'],
  ]),
  ...alike(at('place'), 'neither door lets a case in that holds null, and what it fills in is none', [
    ['value === null', 'false'],
  ]),
  ...alike(at('sized-by-surge'), TIE, [['surge <= designPressure', 'surge < designPressure']]),
];
