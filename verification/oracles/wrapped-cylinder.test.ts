import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { wrappedCylinder } from '../../src/mechanics/index.js';
import { gauge, length, modulus, stress } from '../../src/quantity/index.js';

/** Against a finite-element program, by its output in wrapped-cylinder-calculix.json. */

interface Row {
  readonly ends: 'open ends' | 'closed ends' | 'plane strain';
  readonly radii: readonly [number, number, number];
  readonly pipe: readonly [number, number];
  readonly wrap: readonly [number, number, number];
  readonly poisson: readonly [number, number, number];
  readonly pressure: number;
  readonly boreHoop: number;
  readonly wrapHoop: number;
  readonly interfacePressure: number;
}

const { rows } = JSON.parse(readFileSync(new URL('wrapped-cylinder-calculix.json', import.meta.url), 'utf8')) as {
  readonly rows: readonly Row[];
};

it('has the stresses of a wrapped thick pipe of a finite-element program within 0.12 per cent', () => {
  expect(rows).toHaveLength(6);
  for (const row of rows) {
    const ours = wrappedCylinder({
      pressure: gauge.MPa(row.pressure),
      innerRadius: length.mm(row.radii[0]),
      interfaceRadius: length.mm(row.radii[1]),
      outerRadius: length.mm(row.radii[2]),
      pipeModulus: modulus.MPa(row.pipe[0]),
      pipePoisson: row.pipe[1],
      hoopModulus: modulus.MPa(row.wrap[0]),
      axialModulus: modulus.MPa(row.wrap[1]),
      radialModulus: modulus.MPa(row.wrap[2]),
      hoopToAxial: row.poisson[0],
      hoopToRadial: row.poisson[1],
      axialToRadial: row.poisson[2],
      ends: row.ends,
    });
    const pairs = [
      [stress.inMPa(ours.boreHoop), row.boreHoop, 2e-4],
      [stress.inMPa(ours.wrapHoop), row.wrapHoop, 3e-4],
      [gauge.inMPa(ours.interfacePressure), row.interfacePressure, 1.2e-3],
    ] as const;
    for (const [found, theirs, allowed] of pairs)
      expect(Math.abs(found / theirs - 1), `${row.ends}: ${found} against ${theirs} MPa`).toBeLessThan(allowed);
  }
});
