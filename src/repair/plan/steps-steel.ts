import type { Line } from '../../quantity/index.js';
import { exactly, line, roundedDown, roundedUp, saidIn } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { leastSteelReading } from '../../site/index.js';
import { coldestForCure } from '../site/coldest-for-cure.js';
import { laidLength } from '../wrap/wrap.js';
import type { PlanFacts } from './facts.js';
import { type StepWords, sentence } from './step-words.js';

/** Preparing the steel. */
export function steel(facts: PlanFacts): StepWords {
  const { site, wrap, extent, case: repairCase } = facts;
  const profile = roundedUp('profile', 'length', site.requiredProfile);
  const from = {
    qualification: 'as the system was qualified',
    class: `what class ${repairCase.repair.class} asks for`,
    leak: 'what every leak asks for',
  }[site.surfaceFrom];
  return {
    id: 'surface',
    title: 'Prepare the steel',
    does: [
      line(
        'Degrease first, then prepare {0} of pipe or more, all round, the wrap with a margin.',
        roundedUp('length to prepare', 'length', laidLength(wrap, extent)),
      ),
      line(
        `Grade ${site.requiredGrade}, profile {0} or more (${from}). Blow off the dust; touch it with clean gloves only.`,
        profile,
      ),
      line('At thin wall and at the hole work by hand and gently: blasting can break through.'),
    ],
    practice: [
      line('Hand and power tools reach St 2 or St 3 and leave no profile by themselves: roughen and measure.'),
      line(
        'First resin within {0} of preparing, sooner when rust blooms.',
        roundedDown('open time', 'time', practice.openTime.value),
      ),
    ],
    goes: [
      line(`${site.requiredGrade} by the comparison pictures, all round.`),
      line('Profile {0} or more, by the method of the qualification.', profile),
      line(
        'No oil, no dust on clear tape, no rust bloom; salts at most {0}.',
        roundedDown('salts', 'areal weight', practice.highestSalts.value),
      ),
    ],
    stops: [
      line('A lighter grade or less profile; water or product on the steel: stop the weep first, then prepare again.'),
      line('More wall loss than was measured.'),
    ],
    call: 'the designer for another grade, the inspector for more wall loss',
    signs: 'surface inspector',
  };
}

/** Whether resin may be opened now. */
export function gate(facts: PlanFacts): StepWords {
  const { site, case: repairCase } = facts;
  const leastReading = leastSteelReading({
    minimumTemperature: coldestForCure(repairCase),
    thermometerError: repairCase.site.instruments?.temperatureError ?? practice.thermometerError.value,
  });
  const goes: Line[] = [];
  if (site.steelNeeded !== undefined && site.dewPoint !== undefined) {
    goes.push(
      line(
        `Steel {0} or more above the ${site.isFrost === true ? 'frost' : 'dew'} point after the errors of the instruments. With the air of the case (dew point {1}) it has to read {2} or more.`,
        exactly('margin', 'temperature difference', practice.dewPointMargin.value),
        exactly('dew point', 'temperature', site.dewPoint),
        roundedUp('steel', 'temperature', site.steelNeeded),
      ),
    );
  }
  goes.push(
    line(
      'Humidity at most {0} in the air, and at the steel.',
      exactly('humidity', 'ratio', practice.highestHumidity.value),
    ),
    line(
      'Steel reads {0} or more: the resin still cures, and nothing freezes.',
      roundedUp('steel', 'temperature', leastReading),
    ),
  );
  if (site.holdTime !== undefined)
    goes.push(line('The forecast keeps all this for {0}.', roundedUp('time', 'time', site.holdTime)));
  const against = site.reasons.filter(({ decision }) => decision !== 'go');
  return {
    id: 'gate',
    title: 'Site gate: may resin be opened?',
    does: [
      line(
        'Read air, humidity and the steel at its coldest place. Read again at each batch and when the weather turns.',
      ),
      line(`The case as given says: ${site.decision.toUpperCase()}.`),
      ...against.map(({ check, because }) => saidIn(because, (text) => `${sentence(check)}: ${text}.`)),
    ],
    goes,
    stops: [
      line('One of these not kept, rain, frost, a wet or sweating pipe.'),
      ...against.map(({ check, change }) => saidIn(change, (text) => `What changes it, ${check}: ${text}.`)),
    ],
    call: 'the foreman decides; for a shelter, a heater or another hour the designer',
    signs: 'foreman',
  };
}
