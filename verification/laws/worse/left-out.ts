import type { RepairCase } from '../../../src/repair/index.js';
import { type Paths, withPaths } from '../../../tests/faults/cases.js';
import type { Worsening } from './worsening.js';

/** What nobody stated is never taken as good: without the word there is no design. */

const leaks = ({ defect }: RepairCase): boolean => defect.kind === 'through-wall hole';
const isLive = ({ line }: RepairCase): boolean => line.state !== 'empty, dry, isolated, vented' && line.pressure > 0;
const isSealed = ({ seal }: RepairCase): boolean => seal !== undefined;

function without(name: string, applies: (base: RepairCase) => boolean, changes: Paths): Worsening {
  return {
    name,
    demands: 'not designed',
    of: (base) => (applies(base) ? withPaths(base, changes) : undefined),
  };
}

const acid: Paths = {
  'service.contents': 'sulphuric acid, 98 %',
  'service.hazards': ['corrosive'],
};

export const leftOut: readonly Worsening[] = [
  without('no word on the seal of a live leak', (base) => isSealed(base) && isLive(base), { seal: undefined }),
  without('no word on the bands', isSealed, { 'seal.bands': undefined }),
  without('no word on the sheet', isSealed, { 'seal.sheet.across': undefined }),
  without('no word on the collar', isSealed, { 'seal.collar': undefined }),
  without(
    'no written procedure for gas under pressure',
    (base) => isLive(base) && base.service.phase === 'liquid' && !isSealed(base),
    { 'service.phase': 'gas', 'line.writtenProcedure': 'TBD' },
  ),
  without(
    'gas that leaks and is sealed by hand',
    (base) => isSealed(base) && isLive(base) && base.line.state === 'under pressure' && base.repair.class === 3,
    { 'service.phase': 'gas', 'seal.fluid': undefined, 'line.writtenProcedure': 'WP-1' },
  ),
  without('contents that the resin was not tested in', leaks, acid),
  without('no word on what the resin stands', leaks, { 'laminate.resists': undefined }),
  without('no word on what the putty stands', isSealed, { 'seal.putty.resists': undefined }),
  without('no word on surges', () => true, { 'service.surge': undefined }),
  without('no word on cracks', () => true, { 'service.cracking': undefined }),
  without('sour service without a crack test', () => true, { 'service.cracking': { environment: 'sour' } }),
  without('no word on what stands nearest', () => true, { 'defect.nearestAttachment': undefined }),
  without('no word on neighbouring losses', () => true, { 'defect.neighbours': undefined }),
  without('no word on whether the line is held', () => true, { 'loads.heldLine': undefined }),
  without('no word on the cure of the sample', () => true, { 'laminate.transitionCuredAt': undefined }),
  without('a cure colder than that of the sample', () => true, { 'laminate.transitionCuredAt': 320 }),
  without('no word on the fibre', () => true, { 'laminate.fibre': undefined }),
  without('carbon on steel with nothing between', () => true, {
    'laminate.fibre': 'carbon',
    'laminate.isolatingLayer': undefined,
  }),
  without('no word on the lift of the filler', ({ filler }) => filler !== 'none', { 'filler.greatestLift': undefined }),
  without(
    'no word on the rating within the test',
    ({ acceptance }) => acceptance !== undefined && acceptance.pressureTest !== 'none',
    { 'acceptance.pressureTest.lowestRating': undefined },
  ),
  without('no word on the temperature of the long-term tests', ({ repair }) => repair.method === 'long-term strength', {
    'laminate.longTermStrength.testTemperature': undefined,
  }),
  without('colder in service than the qualification', () => true, {
    'service.lowestTemperature': 123,
    'laminate.lowestTemperature': 250,
  }),
  without('no word on the lowest temperature of the qualification', () => true, {
    'service.lowestTemperature': 250,
    'laminate.lowestTemperature': undefined,
  }),
  without('no word on the growth of internal loss', ({ defect }) => defect.cause === 'internal corrosion', {
    'defect.growth': 'none',
  }),
];
