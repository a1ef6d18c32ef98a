import type { Amount, Line } from '../../quantity/index.js';
import { exactly, line, roundedDown, roundedUp, saidIn } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { leastSteelReading } from '../../site/index.js';
import { sidesOfBend } from '../design/side-of-bend.js';
import { thermometerErrorOf } from '../mix-and-cure/steel-temperatures.js';
import { coldestForCure } from '../site/span-of-cure.js';
import { leastOf } from '../timeline/duration.js';
import { stepAt } from '../timeline/timeline.js';
import { laidLength } from '../wrap/wrap.js';
import { BLANK } from './blank.js';
import type { PlanFacts } from './facts.js';
import { type StepWords, sentence } from './step-words.js';

/** How far the loss goes at most, along and round the pipe: all that the design was made for. */
export function largestLoss({ case: { defect } }: PlanFacts): [Amount, Amount] {
  return [
    roundedDown('length of the defect', 'length', defect.axialLength),
    roundedDown('width of the defect', 'length', defect.circumferentialWidth),
  ];
}

/** Preparing the steel. */
export function steel(facts: PlanFacts): StepWords {
  const { site, wrap, extent, seal, found, line: atWork, case: repairCase } = facts;
  const held = repairCase.seal?.bands === 'left' ? 'putty, sheet and bands' : 'putty and sheet';
  const profile = roundedUp('profile', 'length', site.requiredProfile);
  const wall = roundedUp('remaining wall', 'length', repairCase.defect.remainingWall);
  const loss = largestLoss(facts);
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
        `Degrease first, then prepare {0} of pipe or more${sidesOfBend(extent).outside}, all round, the wrap with a margin.`,
        roundedUp('length to prepare', 'length', laidLength(wrap, extent)),
      ),
      line(
        `Grade ${site.requiredGrade}, profile {0} or more (${from}). Blow off the dust; touch it with clean gloves only.`,
        profile,
      ),
      line(
        `At thin wall${found.throughWall ? ' and at the hole' : ''} work by hand and gently: blasting can break through.`,
      ),
      ...(seal === undefined
        ? []
        : [
            line(
              `Work round the seal: nobody touches ${held}${atWork.pressure === 0 ? '' : ', which hold the pressure'}.`,
            ),
          ]),
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
      line(`Wall measured again on the prepared steel, least of all readings: ${BLANK}; {0} or more.`, wall),
      line(
        `Loss measured again on the prepared steel, along the pipe: ${BLANK}, {0} or less; round it: ${BLANK}, {1} or less.`,
        ...loss,
      ),
      line(
        'No oil, no dust on clear tape, no rust bloom; salts at most {0}.',
        roundedDown('salts', 'areal weight', practice.highestSalts.value),
      ),
    ],
    stops: [
      line('A lighter grade or less profile; water or product on the steel: stop the weep first, then prepare again.'),
      line(
        'Less wall than {0}: the preparation took it, or it was never there. No resin; the design is run again.',
        wall,
      ),
      line(
        'A loss longer than {0} or wider than {1}: no resin; the design is run again with the loss as found.',
        ...loss,
      ),
    ],
    call: 'the designer for another grade, the inspector for more wall loss',
    signs: 'surface inspector',
  };
}

/** Bare steel that stood while the filler cured: prepared anew, or looked at once more. */
export function steelAgain(facts: PlanFacts): StepWords {
  const { site, timeline, case: repairCase } = facts;
  const age = practice.openTime.value;
  const isOrdered = stepAt(timeline, 'surface-again')?.duration.known !== true;
  const profile = roundedUp('profile', 'length', site.requiredProfile);
  const open = roundedDown('open time', 'time', age);
  return {
    id: 'surface-again',
    title: isOrdered ? 'Prepare the bare steel again' : 'Look at the bare steel again',
    does: [
      isOrdered
        ? line(
            `The bare steel on both sides of the filler is older than {0}: prepare it again, ${site.requiredGrade}, profile {1} or more.`,
            open,
            profile,
          )
        : line('Bare steel older than {0}, or with any bloom of rust, is prepared again.', open),
      line(
        repairCase.filler === 'none'
          ? 'Blow off the dust; touch the steel with clean gloves only.'
          : 'Blow the dust off steel and filler; touch both with clean gloves only.',
      ),
      line('Read air, humidity and the steel at its coldest place again, as at the gate.'),
    ],
    goes: [
      line(
        `${site.requiredGrade} by the comparison pictures, profile {0} or more, no rust bloom, no dust, no oil.`,
        profile,
      ),
      line('Air, humidity and steel read what the gate asks for.'),
      line(`A straight edge along the pipe and a tape round it show no gap where the wrap will lie: ${BLANK}.`),
    ],
    stops: [
      line('Rust bloom, a wet or sweating pipe, a reading that the gate would not let pass.'),
      line('A gap, a flat or an oval pipe: fill it first, to the roundness of the pipe; ask the designer how much.'),
    ],
    call: 'the inspector; the designer for a shelter or another hour',
    signs: 'surface inspector',
  };
}

/** How long the forecast keeps what the gate asks for, and what is not counted in that. */
function forecastLines({ site: { holdTime }, timeline: { steps } }: PlanFacts): Line[] {
  const counted = steps.slice(
    steps.findIndex(({ id }) => id === 'gate'),
    steps.findIndex(({ id }) => id === 'cure'),
  );
  const open = counted.flatMap(({ id, duration }) =>
    duration.known || duration.atLeast !== undefined ? [] : [{ id, because: duration.because }],
  );
  const time = roundedUp('time', 'time', leastOf(holdTime));
  return [
    holdTime.known
      ? line('The forecast keeps all this for {0}, to the end of the cure.', time)
      : line(`The forecast keeps all this to the end of the cure, longer than {0}${unlessSaid(holdTime, open)}.`, time),
    ...open.map(({ id, because }) => line(`Not counted in it, and to be added: the time of "${id}"; ${because}.`)),
  ];
}

/** Why a time is not known, but for a step that has a row of its own. */
function unlessSaid({ because }: { readonly because: string }, rows: readonly { readonly id: string }[]): string {
  return rows.some(({ id }) => because.includes(`"${id}"`)) ? '' : `: ${because}`;
}

/** Whether resin may be opened now. */
export function gate(facts: PlanFacts): StepWords {
  const { site, case: repairCase } = facts;
  const leastReading = leastSteelReading({
    minimumTemperature: coldestForCure(repairCase),
    thermometerError: thermometerErrorOf(repairCase.site),
  });
  const goes: Line[] = [];
  if (site.steelNeeded !== undefined && site.dewPoint !== undefined) {
    goes.push(
      line(
        `Steel {0} or more above the ${site.isFrost === true ? 'frost' : 'dew'} point, with the errors of the instruments taken off. With the air of that hour (dew point {1}) it has to read {2} or more.`,
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
  goes.push(...forecastLines(facts));
  const against = site.reasons.filter(({ decision }) => decision !== 'go');
  return {
    id: 'gate',
    title: 'Site gate: may resin be opened?',
    does: [
      line(
        'Read air, humidity and the steel at its coldest place. Read again at each batch and when the weather turns.',
      ),
      line(`The foreman decides. By the readings and the forecast of the case: ${site.decision.toUpperCase()}.`),
      ...against.map(({ check, because }) => saidIn(because, (text) => `${sentence(check)}: ${text}.`)),
    ],
    goes,
    stops: [
      line('One of these not kept, rain, frost, a wet or sweating pipe.'),
      ...against.map(({ check, change }) => saidIn(change, (text) => `What changes it, ${check}: ${text}.`)),
    ],
    call: 'the designer for a shelter, a heater or another hour',
    signs: 'foreman',
  };
}
