import type { Force } from '../../quantity/index.js';
import type { RepairCase } from '../case/case.js';

/** The stated force along the pipe, a pull above 0, a push below; none is a force of zero. */
export function externalForceOf({ loads }: RepairCase): Force {
  return loads.axialForce === 'none' ? (0 as Force) : loads.axialForce;
}
