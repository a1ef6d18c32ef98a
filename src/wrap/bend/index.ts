export * from './bend-line-radius.js';
export * from './length-on-bend.js';
export * from './overlap-on-bend.js';
