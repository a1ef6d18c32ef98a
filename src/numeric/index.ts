export { agree, exceeds, exceedsTimes, spans } from './compare.js';
export { countDown, countUp } from './count.js';
export { integrate } from './quadrature.js';
export { missingTo, reaches } from './reach.js';
export { bisect, type Root } from './root.js';
