import type { Line, Temperature } from '../../quantity/index.js';
import { exactly, line, roundedUp } from '../../quantity/index.js';
import type { CureSheet } from '../case/case.js';
import { hoursCountFrom } from '../case/hours-count-from.js';
import { BLANK } from './blank.js';
import type { PlanFacts } from './facts.js';
import { gaugeDuringCure } from './gauge.js';
import { NOT_BY_TIME } from './mix-lines.js';
import type { StepWords } from './step-words.js';

/** The cure: by hardness, not by the clock. */
export function cureStep(facts: PlanFacts): StepWords {
  const { acceptance } = facts;
  const coldest = coldestOf(facts.case.laminate.cure);
  const gauge = gaugeDuringCure(facts);
  return {
    id: 'cure',
    title: 'Let the laminate cure',
    does: [
      line('Leave it alone; keep rain and feet off it. Write down the temperature of the steel every hour.'),
      line(
        'Cover or heat it as the maker allows when the steel nears {0}: below that nothing cures.',
        exactly('coldest', 'temperature', coldest),
      ),
    ],
    goes: [...gauge.goes, ...hardnessLines(facts)],
    stops: [
      ...gauge.stops,
      NOT_BY_TIME,
      line(
        'Hours colder than {0} do not count: wait that much longer. Cured colder, it softens earlier than its sample did.',
        roundedUp('coldest that counts', 'temperature', hoursCountFrom(coldest, facts.case.laminate)),
      ),
      line('A witness plate that stays softer: the plies of its batch were mixed off ratio. Remove them.'),
      line('Hardness that has stopped rising too low: remove the repair, unless the maker names a heating.'),
    ],
    hourly: [
      { name: 'steel', kind: 'temperature' },
      ...(facts.line.pressure === 0 ? [] : [{ name: 'gauge', kind: 'gauge pressure' } as const]),
    ],
    call: 'the maker of the system',
    signs: acceptance.hardness === undefined ? 'nobody may sign yet' : 'inspector',
  };
}

function coldestOf(cure: CureSheet): Temperature {
  if (cure.mechanism === 'moisture') return Math.min(...cure.rows.map(({ temperature }) => temperature)) as Temperature;
  return cure.minimumTemperature;
}

function hardnessLines({ acceptance }: PlanFacts): Line[] {
  const { hardness } = acceptance;
  if (hardness === undefined)
    return [line('NO ACCEPTANCE: the case does not state the hardness of the qualification. Ask the maker for it.')];
  const { scale, leastMean, leastSingle, readings } = hardness;
  return [
    line(
      `${readings === undefined ? 'Readings as the standard of the scale asks' : `${readings} readings`} on a cold, dry surface: mean {0} ${scale} or more, none below {1}.`,
      roundedUp('mean hardness', 'number', leastMean),
      roundedUp('single hardness', 'number', leastSingle),
    ),
    line(`The witness plate of each batch is as hard: ${BLANK}.`),
  ];
}
