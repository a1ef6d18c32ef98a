import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { waterDensity, waterSwelling } from '../../src/acceptance/index.js';
import { density, temperature } from '../../src/quantity/index.js';

/** Against the formulation of the IAPWS of 1995, by the output of another program in water-iapws.json. */

interface Row {
  readonly celsius: number;
  readonly density: number;
}

const { rows } = JSON.parse(readFileSync(new URL('water-iapws.json', import.meta.url), 'utf8')) as {
  readonly rows: readonly Row[];
};
const ours = ({ celsius }: Row): number => waterDensity({ temperature: temperature.degC(celsius) });

it('has the density of fresh water of another program within 3.5e-6', () => {
  expect(rows).toHaveLength(17);
  for (const row of rows) {
    expect(
      Math.abs(ours(row) / row.density - 1),
      `${row.celsius} degC: ${ours(row)} against ${row.density}`,
    ).toBeLessThan(3.5e-6);
  }
});

it('has the swelling between any two temperatures of another program within 3e-6', () => {
  let judged = 0;
  for (const from of rows) {
    for (const to of rows) {
      judged++;
      const swelling = waterSwelling({
        density: density.kgPerM3(ours(to)),
        referenceDensity: density.kgPerM3(ours(from)),
      });
      const theirs = from.density / to.density;
      expect(Math.abs(swelling / theirs - 1), `${from.celsius} to ${to.celsius} degC`).toBeLessThan(3e-6);
    }
  }
  expect(judged).toBe(289);
});
