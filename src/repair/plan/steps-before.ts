import type { Time } from '../../quantity/index.js';
import { coldestForCure } from '../site-stage.js';
import type { PlanFacts } from './facts.js';
import { atLeast, atMost, exactly, line } from './line.js';
import type { PlanLine } from './plan.js';
import { workPractice } from './practice.js';
import type { StepDraft } from './schedule.js';

/** Nobody has stated how long it takes. */
const untold = (): undefined => undefined;

/** What comes before any resin: permit, things to bring, survey, steel, gate. */
export function stepsBefore(facts: PlanFacts): StepDraft[] {
  return [permit(facts), bring(facts), survey(facts), steel(facts), gate(facts)];
}

/** The pressure that may stand in the line while people work on it. */
function livePressure({ case: { repair, seal } }: PlanFacts): number {
  return Math.max(seal?.linePressure ?? 0, repair.pressureDuringApplication ?? 0);
}

function permit(facts: PlanFacts): StepDraft {
  const { case: repairCase, seal } = facts;
  const { service } = repairCase;
  const live = exactly('line pressure', 'gauge pressure', livePressure(facts));
  const jet = seal?.jet;
  const does: PlanLine[] = [
    line('Hold the permit. Isolate the line, lock and tag it, lower the pressure, drain or vent to a safe place.'),
    line(`Contents: ${service.contents}, ${service.phase}; hazards: ${service.hazards.join(', ') || 'none found'}.`),
    line('Gloves, long sleeves, eye protection; keep others out of the area.'),
  ];
  if (service.phase !== 'liquid' || service.hazards.length > 0)
    does.push(line('Test the air, and go on testing it; a second person stands by.'));
  if (service.hazards.includes('flammable'))
    does.push(line('No hot work and no open heater; spark-free tools, bonded and earthed.'));
  if (repairCase.seal !== undefined) does.push(line(`Procedure of the site: ${repairCase.seal.writtenProcedure}.`));
  if (jet !== undefined) {
    does.push(line('Keep out of the line of the jet: it pushes with {0}.', exactly('reaction', 'force', jet.reaction)));
  }
  return {
    id: 'permit',
    title: 'Isolation, permit and protection',
    sort: 'hold point',
    after: [],
    lasts: untold,
    does,
    goes: [
      livePressure(facts) === 0
        ? line('The gauge reads no pressure, and a vent or drain proves it.')
        : line('The gauge reads {0} or less, and somebody watches it.', live),
    ],
    stops: [
      livePressure(facts) === 0
        ? line('Any pressure, flow or weep that the isolation does not stop.')
        : line('More than {0}, or a pressure that rises.', live),
      line('Gas alarm, a change of permit, anything that was not foreseen.'),
    ],
    call: 'the area authority',
    signs: 'area authority and foreman',
  };
}

function bring({ case: repairCase }: PlanFacts): StepDraft {
  const { site } = repairCase;
  return {
    id: 'stock',
    title: 'Lay out materials and tools',
    sort: 'work',
    after: [],
    lasts: untold,
    does: [
      line('Check off the list of materials and tools at the end of this plan, with batch numbers and use-by dates.'),
      line(
        'Keep resin, filler and putty in the shade; bring them to the temperature of the pipe, {0}.',
        exactly('pipe', 'temperature', site.pipeTemperature),
      ),
      line('Prepare a witness plate of the same steel: a little of each batch cures on it, lying on the pipe.'),
    ],
    goes: [line('Everything is there, in date, and the scale, thermometers and gauges are checked.')],
    stops: [line('A pack that is open, out of date or not of the system that was designed for.')],
    call: 'the designer, before anything is replaced by something like it',
    signs: 'foreman',
  };
}

function survey(facts: PlanFacts): StepDraft {
  const { case: repairCase, found } = facts;
  const { defect, pipe } = repairCase;
  const goes = [
    line('Circumference {0}.', exactly('circumference', 'length', Math.PI * found.outsideDiameter)),
    line(
      'Defect no longer than {0} along and {1} round the pipe.',
      atMost('length of the defect', 'length', defect.axialLength),
      atMost('width of the defect', 'length', defect.circumferentialWidth),
    ),
    line('Least wall in it {0} or more.', atLeast('remaining wall', 'length', defect.remainingWall)),
    line(
      'Sound wall beside it, under the whole wrap, {0}; less goes to the designer.',
      exactly('wall', 'length', pipe.wallThickness),
    ),
  ];
  if (defect.holeDiameter !== undefined)
    goes.push(line('Hole no wider than {0}.', atMost('hole', 'length', defect.holeDiameter)));
  return {
    id: 'survey',
    title: 'Measure the pipe again',
    sort: 'hold point',
    after: ['permit'],
    lasts: untold,
    does: [
      line('Measure circumference, wall, defect and hole; no scraping or hammering on thin wall.'),
      line('Mark the centre of the defect on the top of the pipe, beyond the area to prepare.'),
      line(
        'Mark the ends of the wrap {0} to each side of the centre.',
        exactly('half of the wrap', 'length', facts.rolls.end),
      ),
    ],
    goes,
    stops: [line('Any reading worse than these, a crack, a dent, a second leak, a weld under the wrap.')],
    call: 'the designer: the design has to be run again with the new readings',
    signs: 'inspector',
  };
}

function steel(facts: PlanFacts): StepDraft {
  const { site, rolls, case: repairCase } = facts;
  const profile = atLeast('profile', 'length', site.requiredProfile);
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
    lasts: untold,
    does: [
      line(
        'Degrease first, then prepare {0} of pipe or more, all round, the wrap with a margin.',
        atLeast('length to prepare', 'length', rolls.end - rolls.start),
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
        atMost('open time', 'time', workPractice.openTime),
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

function gate(facts: PlanFacts): StepDraft {
  const { site, case: repairCase } = facts;
  const error = repairCase.site.instruments?.temperatureError ?? 0.5;
  const coldest = coldestForCure(repairCase) + error;
  const goes: PlanLine[] = [];
  if (site.steelNeeded !== undefined && site.dewPoint !== undefined) {
    goes.push(
      line(
        `Steel {0} or more above the ${site.isFrost === true ? 'frost' : 'dew'} point after the errors of the instruments. With the air of the case (dew point {1}) it has to read {2} or more.`,
        exactly('margin', 'temperature difference', 3),
        exactly('dew point', 'temperature', site.dewPoint),
        atLeast('steel', 'temperature', site.steelNeeded),
      ),
    );
  }
  goes.push(
    line('Humidity at most {0} in the air, and at the steel.', exactly('humidity', 'ratio', 0.85)),
    line(
      'Steel reads {0} or more: the resin still cures, and nothing freezes.',
      atLeast('steel', 'temperature', Math.max(coldest, 273.15 + error)),
    ),
  );
  if (site.holdTime !== undefined)
    goes.push(line('The forecast keeps all this for {0}.', atLeast('time', 'time', site.holdTime)));
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
      ...against.map(({ check, because }) => line(`${sentence(check)}: ${because}.`)),
    ],
    goes,
    stops: [
      line('One of these not kept, rain, frost, a wet or sweating pipe.'),
      ...against.map(({ check, change }) => line(`What changes it, ${check}: ${change}.`)),
    ],
    call: 'the foreman decides; for a shelter, a heater or another hour the designer',
    signs: 'foreman',
  };
}

/** A text as the start of a sentence. */
export function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
