import { refuse } from '../../formula/index.js';
import { agree, spans } from '../../numeric/index.js';
import { practice } from '../../rules/index.js';
import { checkPointCount, type DepthPoint } from './depth-profile.js';
import type { RemainingStrengthInput } from './remaining-strength-methods.js';

/** Refuses a profile of another defect than the stated one: deeper, shallower or shorter. What it leaves out would count as sound. */
export function checkProfile({ profile, defectDepth, defectLength }: RemainingStrengthInput): void {
  if (profile === undefined) return;
  checkPointCount(profile);
  const apart = practice.wallReadingsApart.value;
  let deepest = 0;
  for (let i = 0; i < profile.length; i++) {
    const { depth } = profile[i] as DepthPoint;
    if (depth > defectDepth * (1 + 1e-9)) {
      const constraint = `must be at most the depth of the defect, ${defectDepth} m`;
      refuse({ code: 'invalid-input', parameter: `profile[${i}].depth`, value: depth, unit: 'm', constraint });
    }
    deepest = Math.max(deepest, depth);
  }
  if (!agree(deepest, defectDepth, apart)) {
    const constraint = `must reach down to the depth of the defect, ${defectDepth} m, within ${apart} m`;
    refuse({ code: 'invalid-input', parameter: 'deepest point of profile', value: deepest, unit: 'm', constraint });
  }
  const [first, last] = [profile[0] as DepthPoint, profile[profile.length - 1] as DepthPoint];
  if (spans(first.position, last.position, defectLength, apart)) return;
  const constraint = `must reach over the length of the defect, ${defectLength} m, within ${apart} m`;
  const value = last.position - first.position;
  refuse({ code: 'invalid-input', parameter: 'length of profile', value, unit: 'm', constraint });
}
