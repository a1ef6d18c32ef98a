import type { Line, Time } from '../../quantity/index.js';
import { exactly, line, roundedDown, roundedUp, saidIn } from '../../quantity/index.js';
import { coldestForCure } from '../site/coldest-for-cure.js';
import type { PlanFacts } from './facts.js';
import { workPractice } from './practice.js';
import type { StepDraft } from './schedule.js';

/** Preparing the steel. */
export function steel(facts: PlanFacts): StepDraft {
  const { site, rolls, case: repairCase } = facts;
  const profile = roundedUp('profile', 'length', site.requiredProfile);
  const from = {
    qualification: 'as the system was qualified',
    class: `what class ${repairCase.repair.class} asks for`,
    leak: 'what every leak asks for',
  }[site.surfaceFrom];
  return {
    id: 'surface',
    title: 'Prepare the steel',
    sort: 'hold point',
    after: ['survey'],
    lasts: () => undefined,
    does: [
      line(
        'Degrease first, then prepare {0} of pipe or more, all round, the wrap with a margin.',
        roundedUp('length to prepare', 'length', rolls.end - rolls.start),
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
        roundedDown('open time', 'time', workPractice.openTime),
      ),
    ],
    goes: [
      line(`${site.requiredGrade} by the comparison pictures, all round.`),
      line('Profile {0} or more, by the method of the qualification.', profile),
      line('No oil, no dust on clear tape, no rust bloom; salts at most 20 mg/m2.'),
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
export function gate(facts: PlanFacts): StepDraft {
  const { site, case: repairCase } = facts;
  const error = repairCase.site.instruments?.temperatureError ?? 0.5;
  const coldest = coldestForCure(repairCase) + error;
  const goes: Line[] = [];
  if (site.steelNeeded !== undefined && site.dewPoint !== undefined) {
    goes.push(
      line(
        `Steel {0} or more above the ${site.isFrost === true ? 'frost' : 'dew'} point after the errors of the instruments. With the air of the case (dew point {1}) it has to read {2} or more.`,
        exactly('margin', 'temperature difference', 3),
        exactly('dew point', 'temperature', site.dewPoint),
        roundedUp('steel', 'temperature', site.steelNeeded),
      ),
    );
  }
  goes.push(
    line('Humidity at most {0} in the air, and at the steel.', exactly('humidity', 'ratio', 0.85)),
    line(
      'Steel reads {0} or more: the resin still cures, and nothing freezes.',
      roundedUp('steel', 'temperature', Math.max(coldest, 273.15 + error)),
    ),
  );
  if (site.holdTime !== undefined)
    goes.push(line('The forecast keeps all this for {0}.', roundedUp('time', 'time', site.holdTime)));
  const against = site.reasons.filter(({ decision }) => decision !== 'go');
  return {
    id: 'gate',
    title: 'Site gate: may resin be opened?',
    sort: 'hold point',
    after: ['surface', 'stock'],
    lasts: (): Time => 0 as Time,
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

/** A text as the start of a sentence. */
export function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
