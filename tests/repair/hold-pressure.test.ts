import { describe, expect, it } from 'vitest';
import { gauge } from '../../src/index.js';
import type { GaugePressure } from '../../src/quantity/index.js';
import { holdPressure } from '../../src/repair/job/hold-pressure.js';
import { designed } from './by-use.js';
import { partWall } from './example-case.js';

describe('the last check of a design', () => {
  const { laminate } = designed(partWall);
  const resisting = (share: number) => {
    const value = (partWall.service.designPressure * share) as GaugePressure;
    const weak = { criterion: 'axial strain, substrate ignored', value } as const;
    const candidates = [{ criterion: 'hoop strain, substrate ignored', value: gauge.MPa(99) } as const, weak];
    return { ...laminate, resistance: { candidates, governing: weak.criterion, value } };
  };

  it('throws as a fault of the library where one criterion resists less than the design pressure', () => {
    expect(() => holdPressure(partWall, resisting(1 - 2e-9))).toThrow(/axial strain.*fault of this library/u);
  });

  it('lets what reaches it to 1e-9 pass', () => {
    expect(() => holdPressure(partWall, resisting(1 - 5e-10))).not.toThrow();
  });
});
