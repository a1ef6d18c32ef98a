import type { Times } from './fresh-process.js';

/** One measurement in a process of its own, started by the bench: which, and of what. Prints its times as JSON. */
const measurements: Readonly<Record<string, (name: string) => Promise<Times>>> = {
  survey: async (name) => (await import('./surveys.js')).surveyTimes(name),
  design: async (name) => (await import('./designs.js')).designTimes(name),
  'by hand': async (name) => (await import('./by-hand.js')).byHandTimes(name),
  long: async (name) => (await import('./long-inputs.js')).longTimes(name),
  'survey by hand': async (name) => (await import('./survey-by-hand.js')).surveyByHand(name),
  peers: async (name) => (await import('./peers.js')).peerTimes(name),
};

const [measurement = '', name = ''] = process.argv.slice(2);
const measure = measurements[measurement];
if (measure === undefined) throw new Error(`"${measurement}" is not one of ${Object.keys(measurements).join(', ')}`);
process.stdout.write(JSON.stringify(await measure(name)));
