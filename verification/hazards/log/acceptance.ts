import { type Hazard, shownIn } from '../hazard.js';

const file = 'verification/hazards/shown/acceptance.test.ts';
const test = shownIn(`${file}: the pressure test`);
const liquid = shownIn(`${file}: the test liquid`);
const wrap = shownIn(`${file}: the wrap`);

/** The wrap as it is laid, and the test of the finished repair. */
export const acceptance: readonly Hazard[] = [
  {
    could: 'The pressure test loads a flange, a valve, a hose, the pipe or the laminate beyond what it bears.',
    would: 'The test would break what it is there to prove, with people near.',
    guards: [
      'acceptance/lowest-rating.ts: reasons the pressure test would overload a flange, valve or hose within',
      'acceptance/pressure-test.ts: warnCrew The test pressure {0} lies above what the laid laminate resists',
      'acceptance/pressure-test.ts: reasons the pressure test would make the sound pipe yield',
    ],
    tests: test(
      'above the rating of a valve within its length',
      'above what the laminate resists on its day',
      'at which the sound pipe yields',
    ),
  },
  {
    could: 'The line is tested with gas.',
    would: 'Where it parts, gas throws pieces where liquid only spills.',
    guards: [
      'acceptance/stored-energy.ts: warnCrew The gas of the pressure test stores more energy than the rule fo',
      'acceptance/stored-energy.ts: warnCrew A test with gas stores far more energy than one with liquid: tes',
    ],
    tests: test('with gas', 'with more gas than the rule for the distance knows'),
  },
  {
    could: 'A line that held flammable contents is tested with compressed air.',
    would: 'What is left in it would explode under the pressure of the test.',
    guards: ['acceptance/stored-energy.ts: warnCrew The contents are flammable: test and purge with nitrogen'],
    tests: test('with gas where the contents are flammable'),
  },
  {
    could: 'A line that is hung for gas is filled with the liquid of its test.',
    would: 'Hangers would tear out and the thinned pipe would bend under several times its own weight.',
    guards: ['acceptance/weight-of-test.ts: warnCrew The line carries gas, and the test fills it'],
    tests: test('with liquid in a line that is hung for gas'),
  },
  {
    could: 'A leak under test is put down to cooling, by the density of a liquid that is not in the line.',
    would: 'A repair that leaks would be accepted.',
    guards: ['acceptance/test-water.ts: warnCrew other'],
    tests: liquid('of another density than that of fresh water', 'that nobody named'),
  },
  {
    could: 'The wrap begins closer to the defect than the trade begins it.',
    would: 'Corrosion that reaches a little further than it was measured would lie at the edge of the wrap.',
    guards: ['wrap/rolls.ts: warn The wrap begins less than {0} before the defect, where the trade'],
    tests: wrap('beginning close to the defect'),
  },
  {
    could: 'A batch or a roll takes longer to lay than its resin stays wet.',
    would: 'The last turns would lie on gelled resin and bond to nothing.',
    guards: ['wrap/rolls.ts: warnCrew A <charge.charge> takes longer to lay than {0} of its working ti'],
    tests: wrap('that gels before it lies'),
  },
];
