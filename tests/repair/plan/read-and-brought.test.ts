import { describe, expect, it } from 'vitest';
import type { StepId } from '../../../src/repair/index.js';
import { jobOf, type Named } from './of-every-kind.js';

/** What the crew reads by the hour, writes down by the batch, brings and is told word by word. */

const textsOf = (name: Named, id: StepId): string[] => {
  const step = jobOf(name).plan.steps.find((each) => each.id === id);
  return [...(step?.does ?? []), ...(step?.goes ?? [])].map(({ text }) => text);
};

describe('the readings while the laminate cures', () => {
  const steel = { name: 'steel', kind: 'temperature' };
  it.each<readonly [Named, readonly object[]]>([
    ['wall loss from inside', [steel]],
    ['hydrocarbon under pressure', [steel, { name: 'gauge', kind: 'gauge pressure' }]],
  ])('are of the steel, and of the gauge where the line holds a pressure: %s', (name, readings) => {
    const { plan } = jobOf(name);
    expect(plan.steps.flatMap(({ hourly }) => hourly ?? [])).toEqual(readings);
  });
});

describe('what is brought', () => {
  const itemsOf = (name: Named) => [...jobOf(name).plan.materials, ...jobOf(name).plan.tools];

  it('has a batch to be written down where it sets: the wrap, its resin, the filler and the putty', () => {
    const batches = itemsOf('sealed leak, bands off').flatMap((item) => ('hasBatch' in item ? [item.hasBatch] : []));
    expect(batches).toEqual([true, true, true, true]);
    const named = itemsOf('sealed leak, bands off').flatMap(({ name, hasBatch }) => (hasBatch === true ? [name] : []));
    expect(named).toEqual(['glass/epoxy, tape', 'glass/epoxy, resin', 'epoxy filler', 'hand-kneaded putty']);
  });

  it('is a sheet no larger than stated, though the pad is smaller', () => {
    const sheet = itemsOf('sealed leak under a wide sheet').find(({ name }) => name === 'backing sheet');
    expect(sheet?.note?.amounts).toMatchObject([{ name: 'sheet' }, { value: 0.06, toward: 'down' }]);
  });

  // The scales of wrenches begin about 2 N m.
  it.each<readonly [Named, string]>([
    ['sealed leak, bands off', 'torque wrench'],
    ['sealed leak, two bands off', 'torque screwdriver'],
  ])('turns the bands of a %s by a %s, the same that the step names', (name, tool) => {
    const { design } = jobOf(name);
    const torque = (design.seal === 'none' ? undefined : design.seal.torque) ?? Number.NaN;
    expect(torque > 2).toBe(tool === 'torque wrench');
    expect(itemsOf(name).map((item) => item.name)).toContain(`${tool}, band tool`);
    expect(textsOf(name, 'seal').filter((text) => text.startsWith('Tighten to {0} with a '))).toEqual([
      expect.stringContaining(`with a ${tool},`),
    ]);
  });
});

describe('the words of a step', () => {
  it.each<readonly [Named, StepId, string]>([
    ['sealed leak, bands off', 'putty', 'Leave the band alone until the putty is firm; look for damp.'],
    ['sealed leak, two bands off', 'putty', 'Leave the bands alone until the putty is firm; look for damp.'],
    ['wall loss from inside', 'surface-again', 'Blow off the dust; touch the steel with clean gloves only.'],
    ['wall loss under tape', 'surface-again', 'Blow the dust off steel and filler; touch both with clean gloves only.'],
    ['wall loss without crew', 'gate', 'The forecast keeps all this to the end of the cure, longer than {0}.'],
  ])('are those of its job: %s, at %s', (name, id, text) => {
    expect(textsOf(name, id)).toContain(text);
  });

  it('say at the inspection what else is done with a finding, but for one that is rejected', () => {
    const { design } = jobOf('wall loss under tape');
    const goes = textsOf('wall loss under tape', 'inspection');
    const { inspection } = design.acceptance;
    expect(new Set(inspection.map(({ beyond }) => beyond === 'reject')).size).toBe(2);
    for (const { feature, beyond, remedy } of inspection) {
      const said = goes.filter((text) => text.toLowerCase().startsWith(`${feature.toLowerCase()}: `));
      expect(said, feature).toHaveLength(1);
      expect(said[0]?.endsWith(`; else ${remedy}.`), feature).toBe(beyond !== 'reject');
    }
  });
});
