import { describe, expect, it } from 'vitest';
import * as resin from '../../src/resin/index.js';

/** What holds at a limit of the mix itself, in numbers that a binary fraction holds to the last digit. */

type Given = Readonly<Record<string, unknown>>;

describe('a limit that warns', () => {
  const lump = { density: 1, rateConstant: 1, activationEnergy: 1, size: 1, thermalConductivity: 1, temperature: 1 };
  const cylinder = { ...lump, shape: 'cylinder', gasConstant: 1 };
  const burnt = { sampleMass: 2, fibreMass: 1, laminateDensity: 2000, fibreDensity: 1000, resinDensity: 200_000 };
  const pot = { heatOfReaction: 200e3, specificHeat: 2000 };

  it.each<readonly [string, (given: never) => boolean, Given, Given]>([
    ['a rise of 100 K', resin.adiabaticRiseCanOverheat, pot, { heatOfReaction: 200.1e3 }],
    ['a rise as stated', resin.adiabaticRiseCanOverheat, { ...pot, overheatingRise: 100 }, { overheatingRise: 99 }],
    ['voids of -0.5 %', resin.burnOffVoidsBelowZero, burnt, { resinDensity: 199_000 }],
    // Twice the heat over the limit of 2 of a cylinder: at the very limit the lump no longer keeps cool.
    [
      'a little less than the critical lump',
      resin.runawayParameterBeyondCritical,
      { ...cylinder, heatOfReaction: 1.999 },
      { heatOfReaction: 2 },
    ],
  ])('does not at %s, and does beyond', (_, warns, given, beyond) => {
    expect([warns(given as never), warns({ ...given, ...beyond } as never)]).toEqual([false, true]);
  });
});

describe('where two meet', () => {
  it('a kit of just what is usable may be mixed whole, and governs the batches', () => {
    const plan = (wholeKits: boolean) => resin.batchPlan({ mass: 10, usableMass: 5, kitMass: 5, wholeKits } as never);
    for (const wholeKits of [true, false])
      expect(plan(wholeKits)).toMatchObject({ batches: 2, batchMass: 5, governing: 'kit' });
  });

  it('plies of fibre alone fill the whole thickness', () => {
    const dry = { plies: 2, arealWeight: 0.5, fibreDensity: 1024, thickness: 2 ** -10 };
    expect(resin.measuredFibreFraction(dry as never)).toBe(1);
  });

  it('a patch without width or without length is none, however thin', () => {
    const collar = { outsideDiameter: 0.2, thickness: 0.005, axialLength: 0.3 };
    const bare = resin.collarVolume(collar as never);
    for (const patch of [{ patchLength: 0.1 }, { patchWidth: 0.1 }])
      expect(resin.collarVolume({ ...collar, ...patch } as never)).toBe(bare);
  });
});
