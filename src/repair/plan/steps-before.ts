import { circumference } from '../../pipe/index.js';
import type { Line } from '../../quantity/index.js';
import { exactly, line, roundedDown, roundedUp } from '../../quantity/index.js';
import { wrapEnds } from '../../wrap/index.js';
import { sidesOfBend } from '../design/side-of-bend.js';
import { BLANK } from './blank.js';
import type { PlanFacts } from './facts.js';
import type { StepWords } from './step-words.js';
import { gate, largestLoss, steel, steelAgain } from './steps-steel.js';

/** What comes before any resin: permit, things to bring, survey, steel, gate. */
export function stepsBefore(facts: PlanFacts): StepWords[] {
  return [permit(facts), bring(facts), survey(facts), steel(facts), gate(facts), steelAgain(facts)];
}

/** A laminate burns, and what it held comes open. */
const IN_A_FIRE = line(
  `Safety-critical line, and nobody has written here what becomes of it when the laminate burns off (fire protection over the wrap, or what takes over its duty): ${BLANK}${BLANK}. Blank: nobody starts.`,
);

function permit(facts: PlanFacts): StepWords {
  const { case: repairCase, seal } = facts;
  const { service } = repairCase;
  const { line: state } = facts;
  const live = exactly('line pressure', 'gauge pressure', state.pressure);
  const jet = seal?.jet;
  const does: Line[] = [
    state.pressure === 0
      ? line(
          'Hold the permit. Isolate the line, lock and tag it. Open the highest vent first, then lower the pressure and drain to a safe place: a line that drains shut sucks its thin wall in.',
        )
      : line('LINE STAYS UNDER PRESSURE, {0}. Hold the permit for work on a live line.', live),
    line(`Contents: ${service.contents}, ${service.phase}; hazards: ${service.hazards.join(', ') || 'none found'}.`),
    line('Gloves, long sleeves, eye protection; keep others out of the area.'),
  ];
  if (service.phase !== 'liquid' || service.hazards.length > 0)
    does.push(line('Test the air, and go on testing it; a second person stands by.'));
  if (service.hazards.includes('flammable'))
    does.push(line('No hot work and no open heater; spark-free tools, bonded and earthed.'));
  if (repairCase.line.state !== 'empty, dry, isolated, vented')
    does.push(line(`Procedure of the site: ${repairCase.line.writtenProcedure}.`));
  if (state.pressure !== 0)
    does.push(
      line(
        'The control room knows: no pump started and no valve shut fast until the cure is over, or a surge passes {0}.',
        live,
      ),
    );
  if (jet !== undefined) {
    does.push(line('Keep out of the line of the jet: it pushes with {0}.', exactly('reaction', 'force', jet.reaction)));
  }
  return {
    id: 'permit',
    title: 'Isolation, permit and protection',
    does,
    goes: [
      state.pressure === 0
        ? line(`The gauge reads no pressure: ${BLANK}; an open vent or drain proves it. Locks by: ${BLANK}.`)
        : line(`The gauge reads {0} or less: ${BLANK}; somebody watches it, by name: ${BLANK}.`, live),
    ],
    stops: [
      state.pressure === 0
        ? line('Any pressure, flow or weep that the isolation does not stop.')
        : line('More than {0}, or a pressure that rises.', live),
      line('Gas alarm, a change of permit, anything that was not foreseen.'),
      ...(service.safetyCritical ? [IN_A_FIRE] : []),
    ],
    call: 'the area authority',
    signs: 'area authority and foreman',
  };
}

function bring({ case: repairCase }: PlanFacts): StepWords {
  const { site } = repairCase;
  return {
    id: 'stock',
    title: 'Lay out materials and tools',
    does: [
      line('Check off the list of materials and tools at the front of this plan, with batch numbers and use-by dates.'),
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

/** The overlap is counted from the ends of the defect: what covers the hole may not reach beyond them. */
function placeOfHole({ laminate: { footprint }, extent }: PlanFacts): Line[] {
  if (footprint === undefined) return [];
  const { beyondDefect } = wrapEnds({ laidLength: extent.defectLength, defectLength: footprint.length });
  return [
    line(
      `Hole from the middle of the defect, along the pipe: ${BLANK}; {0} or less.`,
      roundedDown('hole off the middle', 'length', beyondDefect),
    ),
  ];
}

/** What must be known before anybody scrapes, blasts or opens anything. */
function beforeCleaning({ found: { throughWall }, case: { defect, service } }: PlanFacts): Line[] {
  const lines = [line(`Old coating not sampled for lead and asbestos, or either found. Result: ${BLANK}.`)];
  const fromInside = throughWall || defect.cause !== 'external corrosion';
  if (fromInside && service.hazards.length > 0)
    lines.push(
      line(
        `Scale or sludge at the hole not tested for what burns in air by itself, nor for radiation. Results: ${BLANK}. Keep it wet.`,
      ),
    );
  return lines;
}

function survey(facts: PlanFacts): StepWords {
  const { case: repairCase, found } = facts;
  const { defect, pipe } = repairCase;
  const goes = [
    line(
      'Circumference {0}.',
      exactly('circumference', 'length', circumference({ outsideDiameter: found.outsideDiameter })),
    ),
    line('Defect no longer than {0} along and {1} round the pipe.', ...largestLoss(facts)),
    line('Least wall in it {0} or more.', roundedUp('remaining wall', 'length', defect.remainingWall)),
    line(
      'Sound wall beside it, under the whole wrap, {0}; less goes to the designer.',
      exactly('wall', 'length', pipe.wallThickness),
    ),
  ];
  if (defect.holeDiameter !== undefined)
    goes.push(line('Hole no wider than {0}.', roundedDown('hole', 'length', defect.holeDiameter)));
  if (defect.slot !== undefined)
    goes.push(
      line(
        'Slot no longer than {0} along and {1} round the pipe.',
        roundedDown('slot along the pipe', 'length', defect.slot.axialLength),
        roundedDown('slot round the pipe', 'length', defect.slot.circumferentialWidth),
      ),
    );
  goes.push(...placeOfHole(facts));
  return {
    id: 'survey',
    title: 'Measure the pipe again',
    does: [
      line(
        `Measure circumference, wall${found.throughWall ? ', defect and hole' : ' and defect'}; no scraping or hammering on thin wall.`,
      ),
      line('Mark the centre of the defect on the top of the pipe, beyond the area to prepare.'),
      line(
        `Mark the ends of the wrap {0} to each side of the centre${sidesOfBend(facts.extent).outside}.`,
        roundedUp('half of the wrap', 'length', facts.rolls.end),
      ),
    ],
    goes,
    stops: [
      line('Any reading worse than these, a crack, a dent, a second leak, a weld under the wrap.'),
      ...beforeCleaning(facts),
    ],
    call: 'the designer: the design has to be run again with the new readings',
    signs: 'inspector',
  };
}
