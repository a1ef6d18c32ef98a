export { binomialInterval } from './binomial-interval.js';
export { agree, exceeds, spans } from './compare.js';
export { countDown, countUp } from './count.js';
export { mersenneTwister, openFraction } from './mersenne-twister.js';
export { normalBelow, normalDensity, normalQuantile } from './normal.js';
export { integrate } from './quadrature.js';
export { missingTo, reaches } from './reach.js';
export { bisect, type Root } from './root.js';
