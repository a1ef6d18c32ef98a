export { agree, exceeds, reaches } from './compare.js';
export { countDown, countUp } from './count.js';
export { integrate } from './quadrature.js';
export { bisect, type Root } from './root.js';
