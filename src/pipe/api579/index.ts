export * from './api579-length-parameter.js';
export * from './api579-shell.js';
export * from './circumferential-extent-limit.js';
export * from './folias-api579.js';
export * from './local-metal-loss.js';
export * from './local-metal-loss-profile.js';
