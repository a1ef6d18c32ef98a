import type { RepairCase } from '../../../src/repair/index.js';
import { change, less, times, type Worsening } from './worsening.js';

/** A longer or wider slot, a tighter bend: of cases that are made to have them. */

/** A leak through a slot in a defect that leaves it room, empty, so that nothing seals it. */
function slotted(base: RepairCase, share: number): RepairCase | undefined {
  const {
    axialLength,
    circumferentialWidth,
    holeDiameter: _,
    holeAtEndOfLife: __,
    profile: ___,
    ...left
  } = base.defect;
  const { seal: ____, ...unsealed } = base;
  const { method: _____, ...repair } = base.repair;
  return {
    ...unsealed,
    line: { state: 'empty, dry, isolated, vented' },
    repair,
    fitting: 'none',
    loads: { ...base.loads, cycles: 'none' },
    service: { ...base.service, designPressure: less(base.service.designPressure, 4) },
    defect: {
      ...left,
      kind: 'through-wall slot',
      axialLength,
      circumferentialWidth,
      slot: {
        axialLength: times(axialLength, 0.05 + 0.3 * share),
        circumferentialWidth: times(circumferentialWidth, 0.3 - 0.25 * share),
      },
    },
  };
}

/** A defect on an emptied bend under tape. */
function bent(base: RepairCase, share: number): RepairCase | undefined {
  const { outsideDiameter } = base.pipe;
  if (base.wrap.form === 'sheet' || outsideDiameter === undefined || base.defect.slot !== undefined) return undefined;
  const { method: _, ...repair } = base.repair;
  const { seal: __, ...unsealed } = base;
  return {
    ...unsealed,
    line: { state: 'empty, dry, isolated, vented' },
    repair,
    fitting: { kind: 'bend', bendRadius: times(outsideDiameter, 0.8 + 5 * share) },
  };
}

export const byShape: readonly Worsening[] = [
  {
    name: 'a longer slot',
    from: slotted,
    of: (base, factor) => {
      const { slot, axialLength } = base.defect;
      if (slot === undefined || times(slot.axialLength, factor) > axialLength) return undefined;
      return change(base, 'defect', { slot: { ...slot, axialLength: times(slot.axialLength, factor) } });
    },
  },
  {
    name: 'a wider slot',
    from: slotted,
    of: (base, factor) => {
      const { slot, circumferentialWidth } = base.defect;
      if (slot === undefined || times(slot.circumferentialWidth, factor) > circumferentialWidth) return undefined;
      return change(base, 'defect', {
        slot: { ...slot, circumferentialWidth: times(slot.circumferentialWidth, factor) },
      });
    },
  },
  {
    name: 'a tighter bend',
    from: bent,
    of: (base, factor) => {
      const { fitting, pipe } = base;
      if (fitting === 'none' || fitting.bendRadius === undefined) return undefined;
      const bendRadius = less(fitting.bendRadius, factor);
      if (pipe.outsideDiameter === undefined || bendRadius <= pipe.outsideDiameter / 2) return undefined;
      return { ...base, fitting: { ...fitting, bendRadius } };
    },
  },
];
