import { change, type Fault } from './fault.js';

/** The line at work, the pipe as found, what is asked. */

const HELD = 'holds by itself';

const unasked = (did: string, call: string, law: string): Fault => ({
  did,
  changes: [change('repair/asked/ask', call, 'undefined')],
  law,
  says: /designed/u,
});

export const ofLineAndPipe: readonly Fault[] = [
  {
    did: 'people worked under pressure on a wall that could not carry it',
    changes: [change('repair/found/line-at-work', 'atWork.pressure > ofPipe.highestPressure', 'false')],
    law: HELD,
    says: /with its margin/u,
  },
  {
    did: 'a thinned length that would tear open at a hole was a warning',
    changes: [change('repair/found/line-at-work', 'atWork.pressure > ofPipe.highestPressure', 'false')],
    law: HELD,
    says: /tear o/u,
  },
  {
    did: 'the rules for gas and hazards held only where a seal was stated',
    changes: [
      change(
        'repair/found/line-at-work',
        "phase === 'liquid' && hazards.length === 0",
        "work.case.seal === undefined || (phase === 'liquid' && hazards.length === 0)",
      ),
    ],
    law: 'no written procedure for gas under pressure',
    says: /designed/u,
  },
  {
    did: 'the error of the wall reading was not taken off',
    changes: [change('repair/found/wall-today', "readingError === 'none'", 'true')],
    law: HELD,
    says: /strain|bears|carry/u,
  },
  {
    did: 'the width of the loss never entered the safe pressure',
    changes: [
      change('pipe/remaining-strength/remaining-strength', 'across.safePressure < hoopChosen.safePressure', 'false'),
    ],
    law: HELD,
    says: /its width leaves/u,
  },
  {
    did: 'the width of the loss did not grow',
    changes: [
      change('repair/found/strength-at-end', 'found.widthAtEndOfLife', 'work.case.defect.circumferentialWidth', [
        'width: ',
        '',
      ]),
    ],
    law: HELD,
    says: /its width leaves/u,
  },
  {
    did: 'a wider loss bore more along the pipe, past the weakest width',
    changes: [
      change(
        'pipe/remaining-strength/axial-failure-stress',
        'Math.min(beta, Math.PI, weakestHalfAngle(eta))',
        'Math.min(beta, Math.PI)',
      ),
    ],
    law: 'a wider defect',
    says: /pressure that the pipe bears/u,
  },
  {
    did: 'a deeper loss bore more where a method dropped out at its limit',
    changes: [
      change(
        'pipe/remaining-strength/remaining-strength',
        'tooDeep(job, each) ?? assessByMethod(job, each)',
        'assessByMethod(job, each)',
      ),
      change('pipe/remaining-strength/remaining-strength', 'assessLeastWall(job)', 'undefined'),
    ],
    law: 'a deeper defect',
    says: /pressure that the pipe bears/u,
  },
  {
    did: 'a surge above the design pressure was not designed for',
    changes: [change('repair/case/sized-by-surge', 'surge <= designPressure', 'true')],
    law: HELD,
    says: /strain|energy|strength|shared/u,
  },
  {
    did: 'a weld under the laid length was no matter',
    changes: [change('repair/wrap/attachment', 'nearestAttachment >= beyondDefect', 'true')],
    law: HELD,
    says: /a weld or a support/u,
  },
  {
    did: 'steel got colder than the qualification without a word',
    changes: [change('repair/limits/lowest-temperature', 'reaches(coldest, lowestTemperature)', 'true')],
    law: 'colder in service than the qualification',
    says: /designed/u,
  },
  {
    did: 'nobody asked for the lowest temperature of the qualification',
    changes: [change('repair/limits/lowest-temperature', 'coldest >= practice.coldestUnasked.value', 'true')],
    law: 'no word on the lowest temperature of the qualification',
    says: /designed/u,
  },
  {
    did: 'the sound pipe stood above its allowable stress without a word',
    changes: [change('repair/found/sound-pipe', 'stress > allowableStress', 'false')],
    law: 'a sound pipe above its allowable stress',
    says: /no warning/u,
  },
  {
    did: 'the laminate cured colder than the sample of its transition',
    changes: [change('repair/limits/transition', 'reaches(coldestWhileCuring(site), transitionCuredAt)', 'true')],
    law: 'a cure colder than that of the sample',
    says: /designed/u,
  },
  {
    did: 'the growth of internal loss was none where nobody stated it',
    changes: [
      change(
        'repair/found/growth',
        "defect.cause === 'external corrosion' || defect.cause === 'mechanical damage'",
        'true',
      ),
    ],
    law: 'no word on the growth of internal loss',
    says: /designed/u,
  },
  unasked('nobody asked for surges', 'askForSurge(work)', 'no word on surges'),
  unasked('nobody asked for cracks', 'askForCracks(work)', 'no word on cracks'),
  unasked('sour service needed no crack test', 'askForCracks(work)', 'sour service without a crack test'),
  unasked('nobody asked what stands nearest', 'askForAttachment(work)', 'no word on what stands nearest'),
  unasked('nobody asked for the cure of the sample', 'askForSample(work)', 'no word on the cure of the sample'),
  unasked('nobody asked for the fibre', 'askForFibre(work)', 'no word on the fibre'),
  unasked('carbon lay on steel with nothing between', 'askForFibre(work)', 'carbon on steel with nothing between'),
  unasked('nobody asked how thick the filler may be poured', 'askForLift(work)', 'no word on the lift of the filler'),
  unasked(
    'nobody asked for the lowest rating within the test',
    'askForRating(work)',
    'no word on the rating within the test',
  ),
  {
    did: 'the temperature of the long-term tests was not asked',
    changes: [
      change('repair/laminate/long-term', 'given.testTemperature !== undefined', 'true'),
      change('repair/laminate/long-term', 'hottestUpTo(work.case, warm.testTemperature)', 'cool.testTemperature'),
      change('repair/laminate/long-term', 'given.testTemperature as Temperature', 'given.testTemperature ?? 300'),
    ],
    law: 'no word on the temperature of the long-term tests',
    says: /designed/u,
  },
  {
    did: 'a less conservative flow stress was not warned of',
    changes: [
      change('repair/found/less-conservative', "flowStress !== undefined && flowStress !== '1.1 SMYS'", 'false'),
    ],
    law: 'another flow stress',
    says: /no warning/u,
  },
  {
    did: 'a safety factor below what is taken unasked was not warned of',
    changes: [change('repair/found/less-conservative', 'safetyFactor < practice.leastSafetyFactor.value', 'false')],
    law: 'a safety factor of 1.2',
    says: /no warning/u,
  },
  {
    did: 'the effective area was not warned of',
    changes: [change('repair/found/less-conservative', 'byNamed <= lowest && !BY_PROFILE.includes(method)', 'true')],
    law: 'the effective area',
    says: /no warning/u,
  },
  {
    did: 'that the pipe shares the load was not warned of',
    changes: [change('repair/laminate/methods', 'countsOn !== undefined', 'false')],
    law: 'the pipe shares the load',
    says: /no warning/u,
  },
  {
    did: 'an activation energy of 55 J/mol was taken in silence',
    changes: [change('repair/case/admit', 'usual !== undefined', 'false')],
    law: 'an activation energy in kJ for J',
    says: /no warning/u,
  },
  {
    did: 'kelvin for degrees Celsius was taken in silence',
    changes: [change('repair/case/admit', 'usual !== undefined', 'false')],
    law: 'kelvin for degrees Celsius',
    says: /no warning/u,
  },
  {
    did: 'fabric of 800 kg/m2 was taken in silence',
    changes: [
      change('repair/case/admit', 'usual !== undefined', 'false'),
      change('repair/case/contradictions', 'density > practice.heaviestPly.value', 'false'),
    ],
    law: 'fabric in g for kg',
    says: /no warning/u,
  },
  {
    did: 'a radius for a diameter was taken in silence',
    changes: [change('repair/job/slips', 'strange === undefined', 'true')],
    law: 'a radius for a diameter',
    says: /no warning/u,
  },
  {
    did: 'a profile that missed the defect was believed',
    changes: [change('repair/case/contradictions-defect', 'profile !== undefined', 'false')],
    law: 'a profile that misses the defect',
    says: /lets it in/u,
  },
  {
    did: 'a number that is none came through the typed door',
    changes: [change('repair/case/admit', 'Number.isFinite(value)', "typeof value === 'number'")],
    law: 'a number that is none',
    says: /lets it in|NaN/u,
  },
];
