import { describe, expect, it } from 'vitest';
import { parseCase } from '../../src/json/index.js';
import { type Designed, designRepair } from '../../src/repair/index.js';
import { calculationSheet, firstPage, repairDrawing } from '../../src/report/index.js';
import { exampleText } from '../json/examples.js';

const EXAMPLES = [
  'cooling-water-leak',
  'hydrocarbon-line-corrosion',
  'eroded-bend',
  'condenser-leg-slot',
  'vacuum-line',
  'buried-line-bending',
];

interface Printed {
  readonly where: 'first page' | 'sheet' | 'drawing';
  readonly as: RegExp;
  readonly value: (design: Designed) => number | undefined;
  readonly side: 'up' | 'down';
}

const test = ({ acceptance }: Designed) => acceptance.pressureTest;

/** Numbers of an answer as it prints them: lengths in millimetres, pressures in megapascals. */
const printed: readonly Printed[] = [
  { where: 'first page', as: /laid; ([\d.]+) mm needed/u, value: (d) => d.laminate.thickness.value * 1e3, side: 'up' },
  {
    where: 'first page',
    as: /^It resists +([\d.]+) MPa/mu,
    value: (d) => d.laminate.resistance.value / 1e6,
    side: 'down',
  },
  { where: 'first page', as: /^Length +([\d.]+) mm/mu, value: (d) => d.extent.totalLength * 1e3, side: 'up' },
  { where: 'first page', as: /each end ([\d.]+) mm overlap/u, value: (d) => d.extent.overlap.value * 1e3, side: 'up' },
  { where: 'first page', as: /and ([\d.]+) mm taper/u, value: (d) => d.extent.taper * 1e3, side: 'up' },
  { where: 'first page', as: /a taper ([\d.]+) mm/u, value: (d) => d.extent.taper * 1e3, side: 'up' },
  { where: 'first page', as: /b overlap ([\d.]+) mm/u, value: (d) => d.extent.overlap.value * 1e3, side: 'up' },
  {
    where: 'first page',
    as: /^Return +([\d.]+) h/mu,
    value: (d) => (d.timeline.earliestReturn.known ? d.timeline.earliestReturn.time / 3600 : undefined),
    side: 'up',
  },
  { where: 'first page', as: /^Pressure test +([\d.]+) MPa/mu, value: (d) => test(d).pressure / 1e6, side: 'up' },
  {
    where: 'first page',
    as: /^Leak seal +([\d.]+) N m/mu,
    value: (d) => (d.seal === 'none' ? undefined : d.seal.torque),
    side: 'up',
  },
  {
    where: 'sheet',
    as: /^\s*Laminate thickness +([\d.]+) mm/mu,
    value: (d) => d.laminate.thickness.value * 1e3,
    side: 'up',
  },
  { where: 'sheet', as: /^\s*Resists +([\d.]+) MPa/mu, value: (d) => d.laminate.resistance.value / 1e6, side: 'down' },
  { where: 'sheet', as: /^\s*Axial length +([\d.]+) mm/mu, value: (d) => d.extent.totalLength * 1e3, side: 'up' },
  {
    where: 'sheet',
    as: /^\s*Overlap, each end +([\d.]+) mm/mu,
    value: (d) => d.extent.overlap.value * 1e3,
    side: 'up',
  },
  {
    where: 'sheet',
    as: /^\s*Allowable hoop strain +([\d.]+) %/mu,
    value: (d) => d.laminate.hoopStrain * 100,
    side: 'down',
  },
  {
    where: 'sheet',
    as: /^\s*Allowable axial strain +([\d.]+) %/mu,
    value: (d) => d.laminate.axialStrain * 100,
    side: 'down',
  },
  {
    where: 'sheet',
    as: /^\s*Safe pressure, thinned +([\d.]+) MPa/mu,
    value: (d) => (d.found.strength?.safePressure ?? Number.NaN) / 1e6,
    side: 'down',
  },
  {
    where: 'sheet',
    as: /^\s*Wall at the end of life +([\d.]+) mm/mu,
    value: (d) => d.found.wallAtEndOfLife * 1e3,
    side: 'down',
  },
  {
    where: 'sheet',
    as: /^\s*Highest line pressure +([\d.]+) MPa/mu,
    value: (d) => (d.seal === 'none' ? undefined : d.seal.highestPressure / 1e6),
    side: 'down',
  },
  {
    where: 'sheet',
    as: /^\s*Wrap from the centre +([\d.]+) mm/mu,
    value: (d) => (d.rolls?.end ?? Number.NaN) * 1e3,
    side: 'up',
  },
  {
    where: 'sheet',
    as: /^\s*(?:Water|Liquid) to fill +([\d.]+) L/mu,
    value: (d) => (test(d).volume ?? Number.NaN) * 1e3,
    side: 'up',
  },
  { where: 'drawing', as: />overlap ([\d.]+) mm/u, value: (d) => d.extent.overlap.value * 1e3, side: 'up' },
  { where: 'drawing', as: />laminate ([\d.]+) mm/u, value: (d) => d.extent.totalLength * 1e3, side: 'up' },
];

/** A millionth of the last digit is no reason to go on to the next. */
const SLACK = 1e-7;

describe('what an answer prints', () => {
  it.each(EXAMPLES)(
    'of %s is never less than is needed nor more than is resisted, at any digits',
    (name) => {
      const { case: repairCase } = parseCase(exampleText(`${name}.json`));
      const design = designRepair(repairCase, { record: true });
      if (design.verdict !== 'designed') throw new Error(name);
      let seen = 0;
      for (const digits of [2, 3, 4, 6]) {
        const text = {
          'first page': firstPage(design, { digits }),
          sheet: calculationSheet(design, { digits }),
          drawing: repairDrawing(design, { digits }) ?? '',
        };
        for (const { where, as, value, side } of printed) {
          const found = as.exec(text[where])?.[1];
          const exact = value(design);
          if (found === undefined || exact === undefined) continue;
          seen += 1;
          const off = (Number(found) - exact) * (side === 'up' ? 1 : -1);
          expect(off, `${where} ${as} ${digits}: ${found} for ${exact}`).toBeGreaterThanOrEqual(-SLACK * exact);
          expect(off, `${where} ${as} ${digits}: ${found} for ${exact}`).toBeLessThanOrEqual(
            10 ** (1 - digits) * exact,
          );
        }
      }
      expect(seen).toBeGreaterThan(45);
    },
    60_000,
  );
});
