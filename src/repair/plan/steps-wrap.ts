import type { Line } from '../../quantity/index.js';
import { exactly, line, roundedDown, roundedUp } from '../../quantity/index.js';
import type { PlanFacts } from './facts.js';
import { batchLines, MIX_BY_HAND } from './mix-lines.js';
import { workPractice } from './practice.js';
import type { StepDraft } from './schedule.js';

/** Passes and rolls beyond this many are not written out one by one. */
const MOST_LINES = 30;

/** A position along the pipe, in words. */
function place(position: number): string {
  return position < 0 ? '{0} before the centre' : '{0} beyond the centre';
}

/** Passes, rolls and batches of the wrap. */
export function wrapStep(facts: PlanFacts): StepDraft {
  const { rolls, wrap, resinMix, case: repairCase, found, laminate } = facts;
  const { filler, resin } = repairCase;
  const after =
    filler === 'none' || facts.fillerMix === undefined ? (facts.seal === undefined ? 'gate' : 'putty') : 'filler-wait';
  const unit = wrap.form === 'tape' ? 'Pass' : 'Band';
  const does: Line[] = [
    line(
      'Start {0} before the centre of the defect, end {1} beyond it.',
      exactly('start', 'length', -rolls.start),
      exactly('end', 'length', rolls.end),
    ),
    ...(wrap.form === 'tape'
      ? [
          line(
            `${wrap.passes === 1 ? 'One pass: it' : `${wrap.passes} passes to and fro: each`} begins and ends with one full turn on the spot.`,
          ),
          line(
            'Each turn covers {0} of the one before, never less: keep the tolerance upwards.',
            exactly('overlap', 'ratio', repairCase.wrap.form === 'tape' ? repairCase.wrap.overlap : 0),
          ),
        ]
      : [line(`${wrap.layers} layers in each of ${wrap.bands} bands.`)]),
    ...((repairCase.crew?.crews ?? 1) > 1
      ? [line(`${repairCase.crew?.crews} crews side by side: each roll is cut to as many lengths.`)]
      : []),
    ...(resin === 'none' ? [] : [line('Wet the steel, then each layer; roll out the air as you go. No dry fibre.')]),
    ...rolls.passes
      .slice(0, MOST_LINES)
      .map((pass) =>
        line(
          `${unit} ${pass.pass}${wrap.form === 'tape' ? `, ${pass.direction}` : ''}: {0} of ${wrap.form}, to ${place(pass.to).replace('{0}', '{1}')}.`,
          exactly(`${wrap.form} length`, 'length', pass.tapeLength),
          exactly('to', 'length', Math.abs(pass.to)),
        ),
      ),
    ...(rolls.passes.length > MOST_LINES
      ? [line(`Go on in the same way to ${unit.toLowerCase()} ${rolls.passes.length}.`)]
      : []),
    ...(wrap.form === 'tape' ? rollLines(facts) : []),
    taperLine(facts),
  ];
  return {
    id: 'wrap',
    title: `Lay the wrap: ${laminate.plies} plies`,
    sort: 'work',
    after: [after],
    lasts: () => rolls.wrapTime,
    does,
    uses:
      resinMix === undefined
        ? [
            line(
              `{0} of ${wrap.form}.`,
              exactly(`${wrap.form} length`, 'length', wrap.form === 'tape' ? wrap.tapeLength : wrap.sheetLength),
            ),
          ]
        : batchLines(resinMix, rolls.workingTime),
    practice: [
      ...(resinMix === undefined
        ? [line('Tape that water activates: soak about {0}.', exactly('soaking', 'time', workPractice.soaking))]
        : [MIX_BY_HAND]),
      line(
        'Begin about {0} before the leak; use each roll up.',
        exactly('before the leak', 'length', workPractice.wrapBeforeLeak),
      ),
      line('Bare steel older than {0} is prepared again.', roundedDown('open time', 'time', workPractice.openTime)),
    ],
    goes: [
      ...timeLines(facts),
      line(`${laminate.plies} plies counted aloud; each turn laid tight, no wrinkle, no dry spot.`),
      line('Diameter when done about {0}.', exactly('diameter', 'length', finalDiameter(facts))),
    ],
    stops: [
      line('A batch or roll that stiffens before it lies: cut it off, throw it away, do not stretch it.'),
      line('Rain, sweating steel, a turn that strayed: stop, take the turn back while it is wet.'),
      ...remedyLines(facts),
    ],
    call: found.throughWall ? 'the designer; on a weep from below the area authority' : 'the designer',
    signs: 'foreman and inspector',
  };
}

/** Between full turns an overlapped pass leaves its mean of layers, so the wrap grows more than the counted plies. */
function finalDiameter({ laminate, case: { laminate: system, wrap }, wrap: plan }: PlanFacts): number {
  const layers = plan.form === 'tape' && wrap.form === 'tape' ? plan.passes / (1 - wrap.overlap) : laminate.plies;
  return laminate.wrappedDiameter + 2 * layers * system.plyThickness;
}

function rollLines({ rolls }: PlanFacts): Line[] {
  const listed = rolls.rolls
    .slice(0, MOST_LINES)
    .map(({ roll, endsInPass, endsAt }) =>
      line(
        `Roll ${roll} ends in pass ${endsInPass}, ${place(endsAt)}.`,
        exactly('roll ends', 'length', Math.abs(endsAt)),
      ),
    );
  if (rolls.rolls.length <= MOST_LINES) return listed;
  return [...listed, line(`Go on in the same way to roll ${rolls.rolls.length}.`)];
}

function taperLine({ rolls, extent, wrap }: PlanFacts): Line {
  const taper = exactly('taper', 'length', extent.taper);
  if (rolls.stagger === 0)
    return line('All passes end together: the last turns carry fewer layers and make the taper of {0}.', taper);
  return line(
    `Each ${wrap.form === 'tape' ? 'pass' : 'layer'} starts and ends {0} inside the one below it: the taper of {1} on each side.`,
    exactly('stagger', 'length', rolls.stagger),
    taper,
  );
}

function timeLines({ rolls }: PlanFacts): Line[] {
  const { charge, chargeTime, workingTime, chargeLength } = rolls;
  if (workingTime === undefined) return [];
  const limit = roundedDown('working time', 'time', workingTime);
  const length = exactly(`${charge} length`, 'length', chargeLength);
  if (chargeTime === undefined)
    return [
      line(`Each ${charge}, {0} long, laid within {1}. The case states no crew: try how long it takes.`, length, limit),
    ];
  return [
    line(
      `Each ${charge}, {0} long, laid within {1}; this crew takes {2}.`,
      length,
      limit,
      roundedUp('laying', 'time', chargeTime),
    ),
  ];
}

function remedyLines({ rolls }: PlanFacts): Line[] {
  const { fits, remedies, charge } = rolls;
  if (fits !== false) return [];
  const ways: Line[] = [];
  if (remedies?.longestCharge !== undefined)
    ways.push(
      line(
        `shorter: a ${charge} of {0} at most fits`,
        roundedDown(`${charge} length`, 'length', remedies.longestCharge),
      ),
    );
  if (remedies?.crews !== undefined)
    ways.push(line('{0} crews side by side', exactly('crews', 'count', remedies.crews)));
  if (remedies?.coolerThan !== undefined)
    ways.push(line('steel and air at {0} or cooler', roundedDown('steel', 'temperature', remedies.coolerThan)));
  if (remedies?.coolerHour !== undefined)
    ways.push(line('which the forecast has {0} after the start', exactly('hour', 'time', remedies.coolerHour)));
  const none = ways.length === 0 ? ' nothing that can be computed helps: ask the maker for a slower system.' : '';
  return [
    line(`DOES NOT FIT: a ${charge} gels before it is laid.${none}`),
    ...ways.map(({ text, amounts = [] }) => line(`What helps: ${text}.`, ...amounts)),
  ];
}
