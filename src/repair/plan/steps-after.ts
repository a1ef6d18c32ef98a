import { tapTest } from '../../acceptance/index.js';
import type { Line } from '../../quantity/index.js';
import { exactly, line, roundedDown, roundedUp, saidIn } from '../../quantity/index.js';
import { leastLimitOfTest } from '../acceptance/limits-of-test.js';
import { isBeyondRepair } from '../acceptance/pressure-test.js';
import { sidesOfBend } from '../design/side-of-bend.js';
import { BLANK } from './blank.js';
import type { PlanFacts } from './facts.js';
import { type StepWords, sentence } from './step-words.js';

/** What the finished repair goes through: inspection, pressure test, return to service. */
export function stepsAfter(facts: PlanFacts): StepWords[] {
  return [inspection(facts), pressureTest(facts), handBack(facts)];
}

function inspection({ acceptance, extent }: PlanFacts): StepWords {
  const { leastThickness, leastOverlap, highestWrinkle, needsSecondMethod } = acceptance;
  const sides = sidesOfBend(extent);
  return {
    id: 'inspection',
    title: 'Inspect the repair',
    does: [
      line("Measure the thickness at 12, 3, 6 and 9 o'clock, and both overlaps."),
      saidIn(tapTest.how, (how) => `Tap test all over: ${how}`),
      ...(needsSecondMethod
        ? [line('The laminate is too thick for the tap test alone: a second method confirms the bond.')]
        : []),
    ],
    goes: [
      line('Thickness {0} or more.', roundedUp('thickness', 'length', leastThickness)),
      line(
        `Overlap on prepared steel {0} or more${sides.inside} on each side; whole length {1} or more${sides.outside}.`,
        roundedUp('overlap', 'length', leastOverlap),
        roundedUp('length', 'length', extent.totalLength),
      ),
      line('No step or wrinkle above {0}.', roundedDown('wrinkle', 'length', highestWrinkle)),
      ...acceptance.inspection.map(({ feature, limit, beyond, remedy }) =>
        saidIn(limit, (text) => `${sentence(feature)}: ${text}${beyond === 'reject' ? '' : `; else ${remedy}`}.`),
      ),
      line('None of these reaches the fibre: what goes through the resin-rich layer goes to the designer.'),
    ],
    // One row for each defect, by its name: "reject" alone says nothing of what.
    stops: acceptance.inspection
      .filter(({ beyond }) => beyond === 'reject')
      .map(({ feature, remedy }) => line(`${sentence(feature)} that is not as above: reject, ${remedy}.`)),
    call: 'the designer and the owner before anything is cut out or laid anew',
    signs: 'inspector',
  };
}

function pressureTest(facts: PlanFacts): StepWords {
  const { acceptance } = facts;
  const { pressureTest: test } = acceptance;
  const pressure = roundedUp('test pressure', 'gauge pressure', test.pressure);
  const hold = roundedUp('hold', 'time', test.hold);
  if (test.medium === 'none' || (test.medium === 'not stated' && !isBeyondRepair(test))) {
    const why =
      test.instead ??
      'The case does not say whether the line is tested: the owner decides. The level would be {0} for {1}.';
    return {
      id: 'pressure-test',
      title: test.medium === 'none' ? 'Instead of a pressure test' : 'Pressure test, not decided',
      does: [
        line(
          `${sentence(why)}${why.endsWith('.') ? '' : '.'}`,
          ...(test.instead === undefined ? [pressure, hold] : []),
        ),
      ],
      goes: [line('No leak at any step; the line stands at its pressure.')],
      stops: [line('Any leak at the repair: release the pressure.')],
      call: 'the owner of the line',
      signs: 'owner and inspector',
    };
  }
  if (isBeyondRepair(test)) {
    return {
      id: 'pressure-test',
      title: 'STOP: no pressure test at the level of the design',
      does: [line('Nobody raises the line to {0}.', pressure)],
      goes: [line('The designer has laid down another ply or a lower level, in writing, and the plan is made anew.')],
      stops: [
        line('More than {0} in the line at any time.', roundedDown('resistance', 'gauge pressure', test.resistance)),
      ],
      call: 'the designer and the owner of the line',
      signs: 'nobody may sign yet',
    };
  }
  const limit = leastLimitOfTest(facts);
  return {
    id: 'pressure-test',
    title: 'Pressure test',
    does: [
      ...outOfService(facts),
      ...fillLines(facts),
      line(
        'Raise it in steps to {0}; hold {1}. People stay away; nobody touches the repair under test.',
        pressure,
        hold,
      ),
      ...energyLines(facts),
    ],
    goes: [
      line(
        '{0} kept for {1}, but for what a change of temperature explains; nothing drips at the repair.',
        pressure,
        hold,
      ),
      ...coolingLines(facts),
    ],
    stops: [
      line(
        `More than {0} on the gauge, ${limit.name}: let it down at once. Somebody stays at the valve.`,
        roundedDown('limit of the test', 'gauge pressure', limit.value),
      ),
      line('A leak at the repair: release the pressure, remove the repair.'),
      line('A fall that cooling does not explain: find the leak, test again.'),
      ...(facts.line.pressure === 0
        ? []
        : [line('The line still holds its contents: nobody pumps water or gas into it.')]),
    ],
    call: 'the owner of the line',
    signs: 'owner and inspector',
  };
}

/** A line that was worked on under pressure still holds its contents: testing it is another job, with its own permit. */
function outOfService({ line: { pressure }, case: { service } }: PlanFacts): Line[] {
  if (pressure === 0) return [];
  return [
    line(
      `The line still holds ${service.contents}. Take it out of service, lower it, empty and flush it by the procedure of the site, under a permit of its own: number ${BLANK}.`,
    ),
  ];
}

function fillLines({ acceptance: { pressureTest: test } }: PlanFacts): Line[] {
  const { medium, volume, liquid, waterToAdd, testTemperature } = test;
  if (medium === 'gas' || volume === undefined) return [];
  const filled = line(
    `Fill with {0} of ${liquid === 'fresh water' ? 'fresh water' : 'the test liquid'} and let all the air out.`,
    roundedUp('liquid', 'volume', volume),
  );
  if (waterToAdd === undefined || testTemperature === undefined) return [filled];
  return [
    filled,
    line(
      'About {0} more go in to reach the pressure at {1}. Much more means air: let it out.',
      roundedUp('water to add', 'volume', waterToAdd),
      exactly('water', 'temperature', testTemperature),
    ),
  ];
}

function coolingLines({ acceptance: { pressureTest: test } }: PlanFacts): Line[] {
  if (test.pressurePerKelvin === undefined) return [];
  return [
    line(
      'Full and shut off, the line rises by {0} for each {1} of warming, and falls by as much: read the temperature of the pipe with each pressure, and let it down as it warms.',
      roundedUp('pressure for one kelvin', 'gauge pressure', test.pressurePerKelvin),
      exactly('warming', 'temperature difference', 1),
    ),
  ];
}

function energyLines({ acceptance: { pressureTest: test } }: PlanFacts): Line[] {
  const { storedEnergy, tntEquivalent, distance, medium } = test;
  if (storedEnergy === undefined) return [];
  const energy = roundedUp('energy', 'energy', storedEnergy);
  if (medium === 'liquid' || tntEquivalent === undefined || distance === undefined)
    return [line('Stored energy {0}, without air; air makes it far more.', energy)];
  return [
    line(
      'GAS: stored energy {0}, as {1} of TNT. Nobody within {2}.',
      energy,
      roundedUp('TNT', 'mass', tntEquivalent),
      roundedUp('distance', 'length', distance),
    ),
  ];
}

function handBack(facts: PlanFacts): StepWords {
  const { acceptance, endOfLife, case: repairCase } = facts;
  const { service, repair } = repairCase;
  return {
    id: 'return',
    title: 'Return to service',
    does: [
      line('Raise the line to service in steps; look at the repair at each.'),
      line(
        'Mark the repair: date, design, batch numbers, end of its life ({0}).',
        exactly('life', 'time', repair.life),
      ),
      line('Put the record into the file of the line; the owner sets the day of the next inspection.'),
      line(
        `That is within {0} of the survey, by the ${endOfLife.inspectBy}${endOfLife.inspections[0]?.day === undefined ? '' : `: ${endOfLife.inspections[0].day} at the latest`}.`,
        roundedDown('life to the next inspection', 'time', endOfLife.inspectWithin),
      ),
    ],
    goes: [
      line(
        'Every hold point above is signed: steel, gate, no print, steel before the wrap, hardness, inspection, pressure test.',
      ),
      line(
        'At most {0} and {1}.',
        roundedDown('design pressure', 'gauge pressure', service.designPressure),
        roundedDown('design temperature', 'temperature', service.designTemperature),
      ),
    ],
    stops: [
      ...acceptance.missing.map(({ field, askWhom }) => line(`Not stated: ${field}; ask ${askWhom}.`)),
      line('One hold point not signed.'),
      ...onTheTag(facts),
    ],
    call: 'the owner of the line',
    signs: acceptance.missing.length > 0 ? 'nobody may sign yet' : 'owner of the line',
  };
}

/** What whoever comes later has to read at the pipe. */
function onTheTag({ case: { service, seal } }: PlanFacts): Line[] {
  const lines = [
    line(`No tag at the wrap: no welding, cutting or flame nearer than ${BLANK} (from the maker of the system).`),
  ];
  if (seal?.bands === 'left')
    lines.push(
      line(`No day for the wall at the rim of the bands, where steel corrodes in the crevice under them: ${BLANK}.`),
    );
  if (service.phase !== 'liquid')
    lines.push(
      line(
        `No rule at the valve for letting the gas down slowly: what has crept under the wrap pushes the thin wall in. No faster than ${BLANK}.`,
      ),
    );
  return lines;
}

/** How a cured wrap comes off: common practice. */
export const removal: readonly Line[] = [
  line('Isolate, depressurise and hold the permit: what held the pipe is taken away.'),
  line(
    'Two cuts along the pipe, 180 degrees apart, through the laminate and not into the steel; then chisel and lever.',
  ),
  line('Dust of glass and resin: mask, extraction, wet cutting. Spark-free where the area asks for it.'),
];
