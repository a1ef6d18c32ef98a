import { alike, type Equivalent, KNOWN, TIE } from './alike.js';

/** Changes of what is known of the site that nothing can tell from the original. */

const SLACK = 'a slack for the last digits of a unit: no number that anyone writes lies at its very edge';

export const equivalentInSite: readonly Equivalent[] = [
  ...alike('src/site/air/magnus-set.ts', SLACK, [
    ['t >= set.from - 1e-9', 't > set.from - 1e-9'],
    ['t <= set.to + 1e-9', 't < set.to + 1e-9'],
  ]),
  ...alike(
    'src/site/air/moist-air-from-wet-bulb.ts',
    'a temperature less 273.15 is a multiple of a power of two, and 0.01 is none',
    [['tw < 0.01', 'tw <= 0.01']],
  ),
  ...alike('src/site/gate/judged-climates.ts', 'it only spares judging a climate twice', [
    ['before !== undefined', 'false'],
  ]),
  ...alike('src/site/gate/surface-gate.ts', `${KNOWN}: only grades that there are come so far`, [
    ['surfaceGrade(grade)?.method', 'surfaceGrade(grade).method'],
    ['surfaceGrade(requiredGrade)?.method', 'surfaceGrade(requiredGrade).method'],
    ['surfaceGrade(grade)?.meaning', 'surfaceGrade(grade).meaning'],
  ]),
  ...alike('src/site/gate/weather-check.ts', 'the humidity is of exponentials: none is that limit to the last digit', [
    ['reading > 0.05', 'reading >= 0.05'],
  ]),
  ...alike('src/site/gate/weather-gate.ts', `${KNOWN}: there is at least the reading of now`, [
    ['looks.at(-1)?.time', 'looks.at(-1).time'],
    ['looks[0]?.time', 'looks[0].time'],
  ]),
  ...alike(
    'src/site/gate/weather-gate.ts',
    'a span that ends beyond the forecast is no start, and of the hours up to its end there are the same',
    [['index < hours.length - 1', 'index <= hours.length - 1']],
  ),
  ...alike(
    'src/site/gate/weather-gate.ts',
    'where the end of the span is looked for: no hour before the last one found closes a later span',
    [['Math.max(last, start)', 'Math.min(last, start)']],
  ),
  ...alike('src/site/hours/schedule.ts', `${TIE}, or a hair of rounding that is no slack`, [
    ['free > ROUNDING * end', 'free >= ROUNDING * end'],
  ]),
];
