import { describe, expect, it } from 'vitest';
import { parseCase } from '../../../src/json/index.js';
import { length } from '../../../src/quantity/index.js';
import { designRepair } from '../../../src/repair/index.js';
import { refusedFields, verdictOf } from '../../../tests/faults/answers.js';
import { bend, type CaseFile, leak, loss, type Paths, slot, withPaths } from '../../../tests/faults/cases.js';

/** Two fields of a case, each right by itself, that cannot both be right: the door names the one at fault. */

const beside = {
  cause: 'unknown',
  gapAlong: '150 mm',
  gapRound: '0 mm',
  axialLength: '30 mm',
  circumferentialWidth: '25 mm',
  remainingWall: '4.5 mm',
};

/** Breaks at 20 GPa by 1.6 per cent, 320 MPa. */
const elastic = { 'laminate.hoopModulus': '20 GPa', 'laminate.strainToFailure': '1.6 %' };

const rows: readonly (readonly [what: string, base: CaseFile, changes: Paths, field: string])[] = [
  ['a wall left that is thicker than the pipe', leak, { 'defect.remainingWall': '8.5 mm' }, 'defect.remainingWall'],
  [
    'a defect that reaches round more than the pipe',
    loss,
    { 'defect.circumferentialWidth': '530 mm' },
    'defect.circumferentialWidth',
  ],
  [
    'a neighbour with more wall than the pipe',
    leak,
    { 'defect.neighbours': [{ ...beside, remainingWall: '8.5 mm' }] },
    'defect.neighbours[0].remainingWall',
  ],
  [
    'a neighbour that reaches round more than the pipe',
    loss,
    { 'defect.neighbours': [{ ...beside, circumferentialWidth: '1.1 m' }] },
    'defect.neighbours[0].circumferentialWidth',
  ],
  [
    'a neighbour farther round than the pipe',
    loss,
    { 'defect.neighbours': [{ ...beside, gapRound: '530 mm' }] },
    'defect.neighbours[0].gapRound',
  ],
  ['a hole in a wall that has none', loss, { 'defect.holeDiameter': '4 mm' }, 'defect.holeDiameter'],
  [
    'growth by readings of a wall that is gone',
    leak,
    { 'defect.remainingWall': '0 mm', 'defect.readingError': 'none' },
    'defect.remainingWall',
  ],
  [
    'a reading that is older than the pipe',
    leak,
    { 'defect.growth.depth.sincePrevious': '60 year' },
    'defect.growth.depth.sincePrevious',
  ],
  [
    'a wall that was thicker than the pipe',
    leak,
    { 'defect.growth.depth.previousWall': '36 mm' },
    'defect.growth.depth.previousWall',
  ],
  ['a wall that grew back', leak, { 'defect.growth.depth.previousWall': '2 mm' }, 'defect.growth.depth.previousWall'],
  ['a ply that its fabric cannot fill', loss, { 'resin.fabricWeight': '200 g/m2' }, 'laminate.plyThickness'],
  ['a ply that cannot hold its fabric', loss, { 'resin.fabricWeight': '3000 g/m2' }, 'laminate.plyThickness'],
  ['a hole that is larger than its defect', leak, { 'defect.holeDiameter': '80 mm' }, 'defect.holeDiameter'],
  [
    'a hole at the end of the life that is larger than its defect',
    withPaths(leak, { 'defect.holeDiameter': undefined, 'defect.kind': 'metal loss', seal: undefined }),
    { 'defect.holeAtEndOfLife': '80 mm' },
    'defect.holeAtEndOfLife',
  ],
  [
    'an energy beside its own tests',
    leak,
    { 'laminate.holeTests': [{ holeDiameter: '25 mm', laminateThickness: '6.4 mm', pressure: '12 MPa' }] },
    'laminate.holeTests',
  ],
  [
    'a slot where the defect is none',
    loss,
    { 'defect.slot': { axialLength: '10 mm', circumferentialWidth: '40 mm' } },
    'defect.slot',
  ],
  ['a slot longer than its defect', slot, { 'defect.slot.axialLength': '41 mm' }, 'defect.slot.axialLength'],
  [
    'a slot wider than its defect',
    slot,
    { 'defect.slot.circumferentialWidth': '111 mm' },
    'defect.slot.circumferentialWidth',
  ],
  ['a hole that a slot would become', slot, { 'defect.holeAtEndOfLife': '20 mm' }, 'defect.holeAtEndOfLife'],
  ['a radius of what is no bend', loss, { fitting: { kind: 'flange', bendRadius: '300 mm' } }, 'fitting.bendRadius'],
  ['a bend that cuts into itself', bend, { 'fitting.bendRadius': '84 mm' }, 'fitting.bendRadius'],
  ['a hole that shrinks', leak, { 'defect.holeAtEndOfLife': '3 mm' }, 'defect.holeAtEndOfLife'],
  ['points of a profile out of order', loss, { 'defect.profile.3.position': '0.9 in' }, 'defect.profile[3].position'],
  ['a profile deeper than the wall', loss, { 'defect.profile.6.depth': '0.3 in' }, 'defect.profile[6].depth'],
  ['a wall left that the profile passes', loss, { 'defect.remainingWall': '0.12 in' }, 'defect.remainingWall'],
  ['a profile that misses the deepest place', loss, { 'defect.remainingWall': '0.08 in' }, 'defect.profile[6].depth'],
  ['a profile that is shorter than its defect', loss, { 'defect.axialLength': '8 in' }, 'defect.profile[14].position'],
  [
    'filler that is thinner over the defect',
    leak,
    { 'filler.thicknessOverDefect': '1 mm' },
    'filler.thicknessOverDefect',
  ],
  [
    'a wall thicker than the radius',
    loss,
    { 'pipe.wallThickness': '85 mm', 'defect.profile': undefined },
    'pipe.wallThickness',
  ],
  [
    'a tensile strength below the yield',
    loss,
    { 'pipe.material.tensileStrength': '30 ksi' },
    'pipe.material.tensileStrength',
  ],
  [
    'an allowable stress above the yield',
    loss,
    { 'pipe.material.allowableStress': '40 ksi' },
    'pipe.material.allowableStress',
  ],
  [
    'a long-term strength above the breaking stress',
    loss,
    { ...elastic, 'laminate.longTermStrength': { strength: '330 MPa', test: '1000 h survival' } },
    'laminate.longTermStrength.strength',
  ],
  [
    'a second one above it',
    loss,
    {
      ...elastic,
      'laminate.longTermStrength': {
        strength: '100 MPa',
        test: '1000 h survival',
        second: { testTemperature: '40 degC', strength: '330 MPa' },
      },
    },
    'laminate.longTermStrength.second.strength',
  ],
  [
    'two long-term strengths at one temperature',
    loss,
    {
      'laminate.longTermStrength': {
        strength: '60 MPa',
        test: '1000 h survival',
        testTemperature: '40 degC',
        second: { testTemperature: '104 degF', strength: '40 MPa' },
      },
    },
    'laminate.longTermStrength.second.testTemperature',
  ],
  [
    'a long-term strength above that of colder tests',
    loss,
    {
      'laminate.longTermStrength': {
        strength: '160 MPa',
        test: '1000 h survival',
        testTemperature: '80 degC',
        second: { testTemperature: '23 degC', strength: '60 MPa' },
      },
    },
    'laminate.longTermStrength.strength',
  ],
  [
    'a second one above that of colder tests',
    loss,
    {
      'laminate.longTermStrength': {
        strength: '60 MPa',
        test: '1000 h survival',
        testTemperature: '23 degC',
        second: { testTemperature: '80 degC', strength: '160 MPa' },
      },
    },
    'laminate.longTermStrength.second.strength',
  ],
  ['a coldest steel above the hottest', loss, { 'service.lowestTemperature': '150 degF' }, 'service.lowestTemperature'],
  [
    'a pressure cycle upside down',
    loss,
    { 'loads.cycles.lowestPressure': '300 psi', 'loads.cycles.highestPressure': '200 psi' },
    'loads.cycles.highestPressure',
  ],
  [
    'a cycle above the design pressure',
    loss,
    { 'loads.cycles.highestPressure': '600 psi' },
    'loads.cycles.highestPressure',
  ],
  ['work above the design pressure', loss, { 'line.pressure': '600 psi' }, 'line.pressure'],
  ['a static head of gas', loss, { 'service.phase': 'gas', 'line.state': 'static head' }, 'line.state'],
  [
    'a crack test after the survey',
    loss,
    {
      date: '2026-05-06',
      'service.cracking': {
        environment: 'sour',
        test: { method: 'wet MPI', result: 'no crack found', date: '2026-05-07' },
      },
    },
    'service.cracking.test.date',
  ],
  ['a survey on no day', loss, { date: '11.03.2026' }, 'date'],
  [
    'a crack test on no day',
    loss,
    {
      'service.cracking': {
        environment: 'sour',
        test: { method: 'wet MPI', result: 'no crack found', date: 'lately' },
      },
    },
    'service.cracking.test.date',
  ],
  [
    'a crack test whose method tells of cracks',
    loss,
    {
      'service.cracking': {
        environment: 'sour',
        test: { method: 'MPI: three cracks found', result: 'no crack found', date: '2026-05-04' },
      },
    },
    'service.cracking.test.method',
  ],
  ['a word of two alphabets', loss, { 'service.contents': 'cоndensate' }, 'service.contents'],
  [
    'a recent pressure on no day',
    loss,
    { 'service.recentPressure': { pressure: '500 psi', date: 'lately' } },
    'service.recentPressure.date',
  ],
  [
    'a recent pressure after the survey',
    loss,
    { 'service.recentPressure': { pressure: '500 psi', date: '2026-05-07' } },
    'service.recentPressure.date',
  ],
  [
    'a gas in the hole of a liquid line',
    leak,
    {
      'seal.fluid': { phase: 'gas', molarMass: '18 g/mol', heatCapacityRatio: 1.3, atmosphere: '1.013 bar' },
    },
    'seal.fluid.phase',
  ],
  [
    'a laminate that gives energy when strained',
    loss,
    { 'laminate.hoopModulus': '12 GPa', 'laminate.axialModulus': '24 GPa', 'laminate.poissonRatio': 0.8 },
    'laminate.poissonRatio',
  ],
  [
    'a laminate that softens later for being wet',
    loss,
    { 'laminate.glassTransition': '110 degC', 'laminate.wetGlassTransition': '120 degC' },
    'laminate.wetGlassTransition',
  ],
  [
    'a sheet narrower than its laps',
    loss,
    { wrap: { form: 'sheet', width: '40 mm', rollLength: '20 m' } },
    'wrap.width',
  ],
  [
    'cure times from outside the tests, below',
    loss,
    { 'laminate.cure.testedFrom': '25 degC' },
    'laminate.cure.testedFrom',
  ],
  ['cure times from outside the tests, above', loss, { 'laminate.cure.testedTo': '20 degC' }, 'laminate.cure.testedTo'],
  ['a working time beyond the cure', loss, { 'laminate.cure.workingTime': '25 h' }, 'laminate.cure.workingTime'],
];

describe('a contradiction', () => {
  it('two measures of one pipe', () => {
    const { case: read } = parseCase(JSON.stringify(loss));
    const both = { ...read, pipe: { ...read.pipe, circumference: length.mm(530) } };
    expect(() => designRepair(both)).toThrow('pipe.outsideDiameter');
    expect(designRepair(read).verdict).toBe('designed');
  });

  it('a confirmed number that no rule set has', () => {
    const { case: read } = parseCase(JSON.stringify(loss));
    const reader = { by: 'A. Reader', edition: '2017' };
    const confirming = (path: string) => ({ ...read, confirmed: [{ path, value: 0.06, ...reader }] });
    expect(() => designRepair(confirming('overlap.least'))).toThrow('a rule set, as overlap.minimum');
    expect(designRepair(confirming('overlap.minimum')).verdict).toBe('designed');
  });

  const confirmedBy = (reader: { readonly by: string; readonly edition: string }) => ({
    confirmed: [{ path: 'overlap.minimum', value: '60 mm', ...reader }],
  });
  const reader = { by: 'A. Reader', edition: '2017' };

  it('a number that nobody confirms', () => {
    expect(verdictOf(withPaths(loss, confirmedBy(reader)))).toBe('designed');
    for (const by of ['TBD', 'x', 'nobody'])
      expect(refusedFields(withPaths(loss, confirmedBy({ ...reader, by })))).toEqual(['confirmed[0].by']);
  });

  it('a number that is confirmed in no edition', () => {
    for (const edition of ['?', 'unknown', 'to be confirmed'])
      expect(refusedFields(withPaths(loss, confirmedBy({ ...reader, edition })))).toEqual(['confirmed[0].edition']);
  });

  for (const [what, base, changes, field] of rows) {
    it(what, () => {
      expect(verdictOf(base)).not.toBe('refused');
      expect(refusedFields(withPaths(base, changes))).toEqual([field]);
    });
  }
});
