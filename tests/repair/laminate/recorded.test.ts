import { describe, expect, it } from 'vitest';
import {
  bend,
  type CaseFile,
  emptyLeak,
  evenLoss,
  type Paths,
  slot,
  withPaths,
  yieldedLoss,
} from '../../faults/cases.js';
import { recordedOf } from '../recorded.js';

/** What the record of a laminate says: where it was so, and not where it was not. */

/** (R - D/4)/(R - D/2): 1.28 at R = 1.4 D, 1.06 at 5 D, where the rule set says 1.2. */
const ofDiameter = (times: number): Paths => ({ 'fitting.bendRadius': `${times * 168.3} mm` });
const straight: Paths = { fitting: 'none' };
const sheet = (width: string): Paths => ({ wrap: { form: 'sheet', width, rollLength: '25 m', waste: '10 %' } });
const noVacuum: Paths = { 'loads.externalPressure': 'none' };
/** So wide that no strip over it is short beside the pipe. */
const wide: Paths = {
  ...noVacuum,
  'defect.axialLength': '300 mm',
  'defect.circumferentialWidth': '300 mm',
  'defect.slot': { axialLength: '280 mm', circumferentialWidth: '280 mm' },
  'service.designPressure': '1 bar',
};
const ASIDE = 'lines along the pipe by the plies that go through at a joint';
const ROUND = 'laminate/equivalent-axial-force, with the equivalent pressure';

describe('the record of a laminate', () => {
  it.each<readonly [string, CaseFile, Paths, Paths]>([
    ['factor of the bend by its inside', bend, ofDiameter(1.4), ofDiameter(5)],
    ['factor of the bend by the rule set', bend, ofDiameter(5), ofDiameter(1.4)],
    ['Thickness on the fitting', bend, {}, straight],
    ['laminate/thickness-as-straight', bend, {}, straight],
    ['hoop load taken on the diameter over the filler', yieldedLoss, {}, { filler: 'none' }],
    [ROUND, evenLoss, { 'loads.torsion': '1 kN m' }, { 'loads.bendingMoment': '1 kN m' }],
    [ASIDE, evenLoss, sheet('300 mm'), sheet('2 m')],
    ['thickness of the strip along the pipe', slot, noVacuum, wide],
    ['thickness of the ring', slot, wide, noVacuum],
    ['held as a ring', slot, wide, noVacuum],
    ['laminate/slot-cross-over, strip along the pipe', slot, wide, noVacuum],
  ])('says "%s" where it was so, and nowhere else', (text, file, where, nowhere) => {
    expect(recordedOf(withPaths(file, where))).toContain(text);
    expect(recordedOf(withPaths(file, nowhere))).not.toContain(text);
  });

  it('looks at the edge where the laminate is stiffest for a hole, which runs all round, and for no slot', () => {
    const edge = 'laminate/soft-edge-factor, across the rim where the laminate is stiffest';
    expect(recordedOf(emptyLeak)).toContain(edge);
    expect(recordedOf(withPaths(slot, noVacuum))).not.toContain(edge);
  });

  it.each<readonly [string, CaseFile, string, string, number]>([
    ['what plies count on a bend, once for each rating', bend, 'laminate/thickness-as-straight', 'Pressure that', 1],
    ['the moduli of a tape, once for each pair', evenLoss, 'laminate/minor-poisson-ratio', 'Loads on the', 1],
  ])('works out %s', (_, file, formula, heading, times) => {
    const said = recordedOf(file);
    const headings = said.filter((text) => text.startsWith(heading)).length;
    expect(headings).toBeGreaterThan(0);
    expect(said.filter((text) => text === formula)).toHaveLength(times * headings);
  });
});
