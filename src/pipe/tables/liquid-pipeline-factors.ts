import { oneOf } from '../../formula/index.js';
import type { TableValue } from './table-value.js';

/** What lowers the design factor of a liquid line. */
export type LiquidPipelineSituation = 'none of these' | 'platform or riser' | 'cold expanded and then heated';

const designFactors: Readonly<Record<LiquidPipelineSituation, number>> = {
  'none of these': 0.72,
  'platform or riser': 0.6,
  'cold expanded and then heated': 0.54,
};

/**
 * Design factor F of a hazardous-liquid pipeline.
 *
 * @param situation what lowers the factor, if anything does
 * @throws CalculationError `invalid-input`
 * @see 49 CFR 195.106(a)
 */
export function liquidDesignFactor(situation: LiquidPipelineSituation): TableValue {
  oneOf(situation, Object.keys(designFactors) as LiquidPipelineSituation[], 'situation');
  return {
    value: designFactors[situation],
    tag: 'published',
    source: { key: 'cfr-49-195', locator: '195.106(a)' },
  };
}

/** How the seam of the pipe is made. */
export type LiquidPipelineJoint =
  | 'seamless'
  | 'electric resistance welded'
  | 'electric flash welded'
  | 'submerged arc welded'
  | 'electric fusion welded, A671, A672 or A691'
  | 'welded, A333'
  | 'furnace lap welded'
  | 'furnace butt welded';

const jointFactors: Readonly<Record<LiquidPipelineJoint, number>> = {
  seamless: 1,
  'electric resistance welded': 1,
  'electric flash welded': 1,
  'submerged arc welded': 1,
  'electric fusion welded, A671, A672 or A691': 1,
  'welded, A333': 1,
  'furnace lap welded': 0.8,
  'furnace butt welded': 0.6,
};

/**
 * Seam joint factor E of a hazardous-liquid pipeline.
 *
 * @param joint how the seam of the pipe is made
 * @throws CalculationError `invalid-input`
 * @see 49 CFR 195.106(e)
 */
export function liquidJointFactor(joint: LiquidPipelineJoint): TableValue {
  oneOf(joint, Object.keys(jointFactors) as LiquidPipelineJoint[], 'joint');
  return { value: jointFactors[joint], tag: 'published', source: { key: 'cfr-49-195', locator: '195.106(e)' } };
}
