import { joinLines, type Line } from '../../quantity/index.js';
import type { AsBuiltRating } from './record.js';

/** No pressure that anybody can state. */
export function unrated(because: string | Line): AsBuiltRating {
  return { because: joinLines([typeof because === 'string' ? { text: because } : because], '') };
}
