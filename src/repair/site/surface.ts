import { roundedUp, type Time } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { surfaceGate } from '../../site/index.js';
import type { PreparationGrade, RepairCase, Site } from '../case/case.js';
import type { SiteDesign, SiteReason } from '../design/design-work.js';
import { asSiteReason } from './reason.js';

/** Grade where the system was not qualified on another; a lighter grade takes a qualification on it. */
const REQUIRED_GRADE: PreparationGrade = 'Sa 2 1/2';

/** What the steel has to be before the first resin, and what asks for it. */
export type RequiredSurface = Pick<SiteDesign, 'requiredGrade' | 'requiredProfile' | 'surfaceFrom'>;

/** The surface on which the system was qualified; where nobody states it, what the class or the leak asks for. */
export function requiredSurface({ site, repair }: RepairCase, throughWall: boolean): RequiredSurface {
  const qualified = site.surface?.qualified;
  if (qualified !== undefined) {
    return { requiredGrade: qualified.grade, requiredProfile: qualified.profile, surfaceFrom: 'qualification' };
  }
  const surfaceFrom = throughWall && repair.class === 1 ? 'leak' : 'class';
  return { requiredGrade: REQUIRED_GRADE, requiredProfile: practice.leastProfile.value, surfaceFrom };
}

/** What speaks for and against the steel as the case records it. */
export function steelReasons({ surface }: Site, { requiredGrade, requiredProfile }: RequiredSurface): SiteReason[] {
  if (surface === undefined) {
    return [
      {
        check: 'steel prepared',
        decision: 'wait',
        limit: roundedUp('profile required', 'length', requiredProfile),
        because: { text: `the case does not hold the prepared steel; ${requiredGrade} is required` },
        change: { text: 'prepare the steel, then record grade, profile and salts' },
      },
    ];
  }
  const { salts } = surface;
  // Cleanness and freshness are seen on the day, at the hold point: here the record is judged.
  const judged = surfaceGate({
    requiredGrade,
    grade: surface.grade,
    requiredProfile,
    profile: surface.profile,
    isFreeOfOil: true,
    hasRustBloom: false,
    sincePreparation: 0 as Time,
    openTime: practice.openTime.value,
    ...(salts === undefined ? {} : { saltLimit: practice.highestSalts.value, saltReadings: [salts] }),
  });
  const recorded = ['preparation grade', 'profile', 'soluble salts'];
  return judged.reasons.filter(({ check }) => recorded.includes(check)).map(asSiteReason);
}
