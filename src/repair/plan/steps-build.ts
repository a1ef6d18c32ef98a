import type { Time } from '../../quantity/index.js';
import { sealPractice } from '../../seal/practice.js';
import type { CureSheet } from '../case.js';
import type { MixDesign } from '../design.js';
import { MIXING_TIME } from '../mix-stage.js';
import { type PlanFacts, timesOf } from './facts.js';
import { atLeast, atMost, exactly, line } from './line.js';
import type { PlanLine } from './plan.js';
import { workPractice } from './practice.js';
import type { StepDraft } from './schedule.js';

/** What is built on the pipe: seal, putty, filler, wrap, each with its wait. */
export function stepsBuild(facts: PlanFacts): StepDraft[] {
  return [...sealSteps(facts), ...fillerSteps(facts), wrapStep(facts), cureStep(facts)];
}

const MIX_BY_HAND = line(
  'Knead or stir for {0} to one even colour; longer eats into the working time.',
  exactly('mixing', 'time', workPractice.mixing),
);
const PRINT = line('A gloved thumb leaves no print at the coldest place.');
const NOT_THE_CLOCK = line('The clock alone never releases it.');

function sealSteps(facts: PlanFacts): StepDraft[] {
  const { seal, case: repairCase } = facts;
  const asked = repairCase.seal;
  if (seal === undefined || asked === undefined) return [];
  const { band, sheet, putty } = asked;
  const times = timesOf(facts, putty.name);
  const highest = atMost('line pressure', 'gauge pressure', seal.highestPressure);
  const does: PlanLine[] = [
    line('Line pressure {0} or less: read it now.', highest),
    line(`Bend the sheet to the pipe${seal.forming === 'pre-roll' ? ': roll it first, or it springs' : ''}.`),
    line(
      `Knead the putty (${putty.name}) and press a pad {0} across over the hole, sheet on it, ${band.count === 1 ? 'band over it' : `${band.count} bands side by side`}.`,
      atLeast('pad', 'length', seal.padDiameter),
    ),
  ];
  if (seal.torque !== undefined)
    does.push(line('Tighten to {0} with a torque wrench, in steps.', exactly('torque', 'moment', seal.torque)));
  const seconds: PlanLine[] =
    times === undefined
      ? []
      : [line('Press it on within {0} of kneading.', atMost('working time', 'time', times.workingTime))];
  return [
    {
      id: 'seal',
      title: 'Seal the leak',
      sort: 'hold point',
      after: ['gate'],
      lasts: () => undefined,
      does: [...does, ...seconds],
      uses: [
        line(
          `${band.count} of band, {0} each, {1} by {2}.`,
          atLeast('band', 'length', seal.bandLength),
          exactly('width', 'length', band.width),
          exactly('thickness', 'length', band.thickness),
        ),
        line('Sheet {0} thick, wider than the pad all round.', exactly('sheet', 'length', sheet.thickness)),
      ],
      practice: [
        line(
          'Pad three times the size of the hole, and {0} beyond it on every side.',
          exactly('margin', 'length', sealPractice.padMargin),
        ),
        line(
          'Stainless sheet of {0} to {1}.',
          exactly('sheet', 'length', sealPractice.sheetThickness[0]),
          exactly('sheet', 'length', sealPractice.sheetThickness[1]),
        ),
        MIX_BY_HAND,
      ],
      goes: [line('No drop and no damp at the pad; the gauge stands still.')],
      stops: [
        line(
          'More than {0} in the line, a weep that tightening to the torque does not stop, a sheet that springs.',
          highest,
        ),
        line(
          'The seal carries nothing along the pipe: {0} stay for the restraints.',
          exactly('end load', 'force', seal.endLoadNotCarried),
        ),
      ],
      call: 'the area authority: lower the pressure; never tighten beyond the torque',
      signs: 'foreman',
    },
    {
      id: 'putty',
      title: 'Wait until the putty takes no print',
      sort: 'hold point',
      after: ['seal'],
      lasts: facts.waitOf(putty.name, putty.cure),
      does: [line('Leave the band alone. Look for damp.')],
      practice: [line('About {0} at {1}.', exactly('time', 'time', 900), exactly('air', 'temperature', 303.15))],
      goes: [PRINT, line('Dry all round.')],
      stops: [NOT_THE_CLOCK, line('Damp: back to the seal.')],
      call: 'the designer',
      signs: 'foreman',
    },
  ];
}

/** Mixing and placing of all batches, one after the other. */
function placing(mix: MixDesign, rate: number): Time {
  return (mix.batches * MIXING_TIME + mix.mass / rate) as Time;
}

function batchLines(mix: MixDesign, workingTime: number | undefined): PlanLine[] {
  const each = line(
    '{0} of base with {1} of hardener in each batch.',
    exactly('base', 'mass', mix.base),
    exactly('hardener', 'mass', mix.hardener),
  );
  const count =
    mix.batches === 1
      ? line('One batch.')
      : line('{0} batches, each mixed when the one before is used up.', exactly('batches', 'count', mix.batches));
  if (workingTime === undefined) return [count, each];
  return [count, each, line('Used up within {0} of the start of mixing.', atMost('working time', 'time', workingTime))];
}

function fillerSteps(facts: PlanFacts): StepDraft[] {
  const { fillerMix: mix, extent, found, case: repairCase, seal } = facts;
  const { filler } = repairCase;
  if (filler === 'none' || mix === undefined) return [];
  const workingTime = timesOf(facts, filler.name)?.workingTime;
  const wholeWrap = filler.underWholeWrap === true;
  const length = wholeWrap ? facts.rolls.end - facts.rolls.start : extent.defectLength;
  return [
    {
      id: 'filler',
      title: 'Mix and place the filler',
      sort: 'work',
      after: [seal === undefined ? 'gate' : 'putty'],
      lasts: () => placing(mix, filler.rate),
      does: [
        line('Fill empty pockets first, then the collar. Press it on so that no air stays.'),
        line(
          'Collar {0} thick, {1} over the defect, {2} long along the pipe.',
          exactly('filler', 'length', filler.thickness),
          exactly('filler over the defect', 'length', filler.thicknessOverDefect),
          exactly('length of the filler', 'length', length),
        ),
        line(
          wholeWrap
            ? 'It lies under the whole wrap, as the system was qualified.'
            : 'It ends there: the overlap on each side stays bare, prepared steel. Wipe off what strays.',
        ),
        line('Leave no edge or hump: radius {0} or more.', atLeast('radius', 'length', 0.005)),
      ],
      uses: batchLines(mix, workingTime),
      practice: [
        MIX_BY_HAND,
        line(
          '{0} or more over a leak, {1} elsewhere.',
          exactly('filler', 'length', workPractice.fillerOverLeak),
          exactly('filler', 'length', workPractice.fillerElsewhere),
        ),
      ],
      goes: [
        line('One even colour in the pot; a little of each batch on the witness plate.'),
        line(
          'Diameter over it at most {0}.',
          atMost('diameter', 'length', found.outsideDiameter + 2 * filler.thicknessOverDefect),
        ),
      ],
      stops: [line('Streaks in the pot, a pot that grows hot or strings: throw the batch away, do not thin it.')],
      call: 'the designer when it gets thicker or longer than this',
      signs: 'foreman',
    },
    {
      id: 'filler-wait',
      title: 'Wait until the filler is firm',
      sort: 'hold point',
      after: ['filler'],
      lasts: facts.waitOf(filler.name, filler.cure),
      does: [line('Then abrade it to a dull, even surface and blow off the dust.')],
      goes: [PRINT, line('No greasy film; dull all over.')],
      stops: [NOT_THE_CLOCK, line('Soft or tacky places: wait, or cut them out.')],
      call: 'the maker of the filler',
      signs: 'foreman',
    },
  ];
}

/** Passes and rolls beyond this many are not written out one by one. */
const MOST_LINES = 30;

/** A position along the pipe, in words. */
function place(position: number): string {
  return position < 0 ? '{0} before the centre' : '{0} beyond the centre';
}

function wrapStep(facts: PlanFacts): StepDraft {
  const { rolls, wrap, resinMix, case: repairCase, found, laminate } = facts;
  const { filler, resin } = repairCase;
  const after =
    filler === 'none' || facts.fillerMix === undefined ? (facts.seal === undefined ? 'gate' : 'putty') : 'filler-wait';
  const unit = wrap.form === 'tape' ? 'Pass' : 'Band';
  const does: PlanLine[] = [
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
      line('Bare steel older than {0} is prepared again.', atMost('open time', 'time', workPractice.openTime)),
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

function rollLines({ rolls }: PlanFacts): PlanLine[] {
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

function taperLine({ rolls, extent, wrap }: PlanFacts): PlanLine {
  const taper = exactly('taper', 'length', extent.taper);
  if (rolls.stagger === 0)
    return line('All passes end together: the last turns carry fewer layers and make the taper of {0}.', taper);
  return line(
    `Each ${wrap.form === 'tape' ? 'pass' : 'layer'} starts and ends {0} inside the one below it: the taper of {1} on each side.`,
    exactly('stagger', 'length', rolls.stagger),
    taper,
  );
}

function timeLines({ rolls }: PlanFacts): PlanLine[] {
  const { charge, chargeTime, workingTime, chargeLength } = rolls;
  if (workingTime === undefined) return [];
  const limit = atMost('working time', 'time', workingTime);
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
      atLeast('laying', 'time', chargeTime),
    ),
  ];
}

function remedyLines({ rolls }: PlanFacts): PlanLine[] {
  const { fits, remedies, charge } = rolls;
  if (fits !== false) return [];
  const ways: PlanLine[] = [];
  if (remedies?.longestCharge !== undefined)
    ways.push(
      line(`shorter: a ${charge} of {0} at most fits`, atMost(`${charge} length`, 'length', remedies.longestCharge)),
    );
  if (remedies?.crews !== undefined)
    ways.push(line('{0} crews side by side', exactly('crews', 'count', remedies.crews)));
  if (remedies?.coolerThan !== undefined)
    ways.push(line('steel and air at {0} or cooler', atMost('steel', 'temperature', remedies.coolerThan)));
  if (remedies?.coolerHour !== undefined)
    ways.push(line('which the forecast has {0} after the start', exactly('hour', 'time', remedies.coolerHour)));
  const none = ways.length === 0 ? ' nothing that can be computed helps: ask the maker for a slower system.' : '';
  return [
    line(`DOES NOT FIT: a ${charge} gels before it is laid.${none}`),
    ...ways.map(({ text, amounts }) => line(`What helps: ${text}.`, ...amounts)),
  ];
}

function cureStep(facts: PlanFacts): StepDraft {
  const { case: repairCase, acceptance } = facts;
  const { laminate } = repairCase;
  const coldest = coldestOf(laminate.cure);
  return {
    id: 'cure',
    title: 'Let the laminate cure',
    sort: 'hold point',
    after: ['wrap'],
    lasts: facts.waitOf(laminate.name, laminate.cure),
    does: [
      line('Leave it alone; keep rain and feet off it. Write down the temperature of the steel every hour.'),
      line(
        'Cover or heat it as the maker allows when the steel nears {0}: below that nothing cures.',
        exactly('coldest', 'temperature', coldest),
      ),
    ],
    goes: hardnessLines(facts),
    stops: [
      NOT_THE_CLOCK,
      line('Hours colder than {0} count nothing: add them.', exactly('coldest', 'temperature', coldest)),
      line('Hardness that has stopped rising too low: remove the repair, unless the maker names a heating.'),
    ],
    call: 'the maker of the system',
    signs: acceptance.hardness === undefined ? 'nobody may sign yet' : 'inspector',
  };
}

function coldestOf(cure: CureSheet): number {
  if (cure.mechanism === 'moisture') return Math.min(...cure.rows.map(({ temperature }) => temperature));
  return cure.minimumTemperature;
}

function hardnessLines({ acceptance }: PlanFacts): PlanLine[] {
  const { hardness } = acceptance;
  if (hardness === undefined)
    return [line('NO ACCEPTANCE: the case does not state the hardness of the qualification. Ask the maker for it.')];
  const { scale, leastMean, leastSingle, readings } = hardness;
  const number = (value: number): string => String(Math.ceil(value * 10 - 1e-6) / 10);
  return [
    line(
      `${readings === undefined ? 'Readings as the standard of the scale asks' : `${readings} readings`} on a cold, dry surface: mean ${number(leastMean)} ${scale} or more, none below ${number(leastSingle)}.`,
    ),
    line('The witness of each batch is as hard.'),
  ];
}
