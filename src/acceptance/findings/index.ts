export * from './finding-limits.js';
export * from './judge-findings.js';
export * from './tap-test.js';
export * from './wrinkle-limit.js';
