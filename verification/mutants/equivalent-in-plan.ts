import { alike, type Equivalent, KNOWN, neither, TIE } from './alike.js';

/** Changes of the plan that no design which was made can tell from the original. */

const plan = (file: string): string => `src/repair/plan/${file}.ts`;
const EMPTY = '["Stryker was here"]';
const TOGETHER = 'the two are given together or not at all';

export const equivalentInPlan: readonly Equivalent[] = [
  ...alike(plan('alerts'), `${KNOWN}: every job has both steps, and each step that another waits for`, [
    ['steel === undefined || wrap === undefined', 'false'],
    ['steel === undefined || wrap === undefined', 'steel === undefined && wrap === undefined'],
    ['steel === undefined', 'false'],
    ['wrap === undefined', 'false'],
    ['earlier === undefined', 'false'],
  ]),
  ...alike(
    plan('alerts'),
    'at the same hour the steel has stood bare for no time, which is below what the trade allows',
    [['wrap.startsAt < steel.endsAt', 'wrap.startsAt <= steel.endsAt']],
  ),
  ...alike(plan('best-start'), `${TIE}; the earlier is kept`, [
    ['endOf(each) < endOf(best)', 'endOf(each) <= endOf(best)'],
  ]),
  ...alike(
    plan('best-start'),
    'of a start its verdict, gate and hours alone are handed out: no step, value or warning',
    [
      ['false', 'true'],
      ['[...work.assumed]', '[]'],
      ['[...work.warnings]', '[]'],
    ],
  ),
  ...alike(
    plan('torque-tool'),
    'the torque holds the area of the pad, and pi: it meets no stated one to the last digit',
    [['torque < practice.leastOnWrench.value', 'torque <= practice.leastOnWrench.value']],
  ),
  ...alike(plan('best-start'), `${KNOWN}: a design that is made has a timeline`, [
    ['notBackBefore !== undefined', 'true'],
  ]),
  ...alike(plan('entered-hours'), 'computed anew with nothing entered the hours are the same: it only saves the time', [
    ['late === 0 && actual === undefined && durations === undefined', 'false'],
  ]),
  ...alike(
    plan('entered-hours'),
    'the gate of the site is judged by limits of practice and by no coefficient of a rule set',
    [['{ rules: design.options.rules }', '{}']],
  ),
  ...alike(plan('entered-hours'), `${KNOWN}: a case with a crew has its start`, [['start === undefined', 'false']]),
  ...alike(plan('mix-lines'), `${KNOWN}: whatever is mixed has a time to be laid in`, [
    ['workingTime !== undefined', 'true'],
  ]),
  ...alike(plan('plan-work'), `${KNOWN}: every job begins with a permit`, [['first?.id', 'first.id']]),
  ...alike(plan('plan-work'), `${KNOWN}: without words it is a fault of this library, and thrown either way`, [
    ['own === undefined', 'false'],
  ]),
  ...alike(plan('steps-after'), `${KNOWN}: a test with a medium has a volume and an energy`, [
    ['volume === undefined', 'false'],
    ['storedEnergy === undefined', 'false'],
    ['[]', EMPTY],
  ]),
  ...alike(plan('steps-after'), `${KNOWN}: ${TOGETHER}, a change of pressure for each kelvin with them`, [
    [
      'waterToAdd === undefined || testTemperature === undefined',
      'waterToAdd === undefined && testTemperature === undefined',
    ],
    ['waterToAdd === undefined', 'false'],
    ['testTemperature === undefined', 'false'],
  ]),
  ...alike(plan('steps-after'), `${KNOWN}: TNT and distance ${TOGETHER}, with gas, and with liquid never`, [
    [
      "medium === 'liquid' || tntEquivalent === undefined || distance === undefined",
      "(medium === 'liquid' || tntEquivalent === undefined) && distance === undefined",
    ],
    ["medium === 'liquid' || tntEquivalent === undefined", 'false'],
    ["medium === 'liquid' || tntEquivalent === undefined", "medium === 'liquid' && tntEquivalent === undefined"],
    ["medium === 'liquid'", 'false'],
    ['tntEquivalent === undefined', 'false'],
    ['distance === undefined', 'false'],
  ]),
  ...alike(plan('steps-after'), 'the first inspection is due within half of the life: there is one', [
    ['endOfLife.inspections[0]?.day', 'endOfLife.inspections[0].day'],
  ]),
  ...neither(
    plan('steps-filler'),
    `${KNOWN}: what is filled is mixed; and no step asks for the words of one that the job does not have`,
    "filler === 'none'",
    'mix === undefined',
    '[]',
  ).filter(({ original, replacement }) => !(replacement === 'false' && original.includes('||'))),
  ...alike(plan('steps-filler'), `${KNOWN}: what is mixed cures, and nobody places filler without a greatest lift`, [
    ["cures.filler === 'none'", 'false'],
    ['greatestLift === undefined', 'false'],
  ]),
  ...alike(plan('steps-seal'), `${KNOWN}; and no step asks for the words of one that the job does not have`, [
    ['seal === undefined || asked === undefined', 'seal === undefined && asked === undefined'],
    ['asked === undefined', 'false'],
    ['[]', EMPTY],
    ["facts.cures.putty === 'none'", 'false'],
    ['times === undefined', 'false'],
  ]),
  ...neither(
    plan('steps-seal'),
    `${KNOWN}: a leak that is sealed has a footprint`,
    'footprint === undefined',
    'seal === undefined',
  ),
  ...alike(plan('steps-steel'), `${KNOWN}: every job looks at the bare steel again`, [
    ["stepAt(timeline, 'surface-again')?.duration", "stepAt(timeline, 'surface-again').duration"],
  ]),
  ...alike(plan('steps-steel'), TOGETHER, [
    [
      'site.steelNeeded !== undefined && site.dewPoint !== undefined',
      'site.steelNeeded !== undefined || site.dewPoint !== undefined',
    ],
    ['site.steelNeeded !== undefined', 'true'],
    ['site.dewPoint !== undefined', 'true'],
  ]),
  ...alike(plan('steps-wrap'), 'a sheet has no overlap to be read', [["wrap.form === 'tape'", 'true']]),
  ...alike(plan('stock'), `${KNOWN}: what is stated is mixed, and what is not is not`, [
    ["resin === 'none' || resinMix === undefined", "resin === 'none' && resinMix === undefined"],
    ["resin === 'none'", 'false'],
    ['resinMix === undefined', 'false'],
    ["filler === 'none' || fillerMix === undefined", "filler === 'none' && fillerMix === undefined"],
    ["filler === 'none'", 'false'],
    ['fillerMix === undefined', 'false'],
  ]),
  ...neither(
    plan('stock'),
    `${KNOWN}: it is only asked where there is a seal`,
    'seal === undefined',
    'asked === undefined',
    '[]',
  ),
  ...alike(plan('wrap-laying'), `${KNOWN}: a sheet has no overlap inside a bend, and a tape on one has both numbers`, [
    [
      "wrap.form === 'sheet' || wrap.insideOverlap === undefined || insideLength === undefined",
      "(wrap.form === 'sheet' || wrap.insideOverlap === undefined) && insideLength === undefined",
    ],
    ["wrap.form === 'sheet' || wrap.insideOverlap === undefined", 'false'],
    [
      "wrap.form === 'sheet' || wrap.insideOverlap === undefined",
      "wrap.form === 'sheet' && wrap.insideOverlap === undefined",
    ],
    ["wrap.form === 'sheet'", 'false'],
    ['wrap.insideOverlap === undefined', 'false'],
    ['insideLength === undefined', 'false'],
  ]),
  ...alike(
    plan('wrap-laying'),
    `${KNOWN}: a tape that is laid is a tape that is stated, and a layer of bands has their places`,
    [
      ["stock.form === 'tape'", 'true'],
      ['begins === undefined', 'false'],
      ['width === undefined', 'false'],
    ],
  ),
  ...alike(plan('wrap-laying'), 'at the centre itself, to the last digit, it is neither before nor beyond it', [
    ['position < 0', 'position <= 0'],
  ]),
  ...alike(
    plan('wrap-times'),
    `${KNOWN}: whatever is laid has a time to be laid in, and what does not fit has its remedies`,
    [
      ['allowedTime === undefined', 'false'],
      ['[]', EMPTY],
      ['remedies?.longestCharge', 'remedies.longestCharge'],
      ['remedies?.coolerThan', 'remedies.coolerThan'],
      ['remedies?.coolerHour', 'remedies.coolerHour'],
    ],
  ),
];
