import { exactly, type Line, line } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { StepId } from '../timeline/timeline.js';
import { BLANK } from './blank.js';
import type { PlanFacts } from './facts.js';
import type { StepWords } from './step-words.js';

/** Steps with hands on the pipe, or with resin on it that is not cured yet. */
const AT_THE_PIPE: ReadonlySet<StepId> = new Set<StepId>([
  'survey',
  'rough-cleaning',
  'seal',
  'putty',
  'surface',
  'gate',
  'filler',
  'filler-wait',
  'surface-again',
  'wrap',
]);

/** On a line under pressure every step at the pipe begins at the gauge; on an empty one the cure does. */
export function withGauge(words: StepWords, facts: PlanFacts): StepWords {
  const { pressure } = facts.line;
  if (pressure === 0 || !AT_THE_PIPE.has(words.id)) return words;
  const limit = exactly('line pressure', 'gauge pressure', pressure);
  return {
    ...words,
    goes: [line(`Gauge before it begins: ${BLANK}; {0} or less.`, limit), ...words.goes],
    stops: [
      line('More than {0} on the gauge, or rising: step back from the pipe, call the area authority.', limit),
      ...words.stops,
    ],
  };
}

/** While the laminate is soft nobody raises the line, and nothing that is shut in may warm it up. */
export function gaugeDuringCure({ line: { pressure } }: PlanFacts): { readonly goes: Line[]; readonly stops: Line[] } {
  const interval = exactly('interval', 'time', practice.gaugeInterval.value);
  if (pressure === 0)
    return {
      goes: [
        line(
          `The vent stands open to the end of the cure; the gauge, read every {0}, shows no pressure: highest ${BLANK}.`,
          interval,
        ),
        line(`Locks and tags stay; the only one who may take them off: ${BLANK}.`),
      ],
      stops: [
        line(
          'A vent that is shut, any pressure on the gauge, no name above: liquid that is shut in warms up and lifts the laminate.',
        ),
      ],
    };
  const limit = exactly('line pressure', 'gauge pressure', pressure);
  return {
    goes: [
      line(`Gauge every {1}, and as the sun comes on the pipe: highest ${BLANK}, {0} or less.`, limit, interval),
      line(`The only one who may raise the line before the hardness is signed: ${BLANK}.`),
    ],
    stops: [line('More than {0}, or no name above: lower the pressure; what was wrapped goes to the designer.', limit)],
  };
}
