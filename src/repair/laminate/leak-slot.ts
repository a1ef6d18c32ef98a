import { decide, step } from '../../formula/index.js';
import {
  slotCrossOver,
  slotPressureCeiling,
  slotResistance,
  thicknessSlot,
  thicknessWideSlot,
  wideSlotResistance,
} from '../../laminate/index.js';
import type { GaugePressure, Length, Modulus } from '../../quantity/index.js';
import type { Slot } from '../case/case.js';
import type { Workbook } from '../job/workbook.js';
import type { LeakResistance } from './leak-held.js';
import { softStrip } from './soft-strip.js';

/** A long strip that bridges the slot one way. */
interface Strip {
  readonly way: string;
  readonly slotWidth: Length;
  readonly stripModulus: Modulus;
}

/** With its edge, which is soft through the thickness of the laminate and turns. */
interface SoftStrip extends Strip {
  readonly edgeFactor: number;
}

/**
 * Three bounds of what a laminate over an opening can release: the strip that bridges it along the pipe, the one that
 * bridges it round the pipe, and the ring of the laminate itself. None can be passed, so that the lowest one holds; and no
 * longer or wider slot comes out thinner.
 */
interface Bounds {
  readonly along: SoftStrip;
  readonly round: SoftStrip;
  /** Of the ring: the smaller extent and the softer strip, for its half crack. */
  readonly ring: Strip;
}

function boundsOf(work: Workbook, leak: LeakResistance, { axialLength, circumferentialWidth }: Slot): Bounds {
  const { hoopModulus, axialModulus } = leak;
  const stripOf = (bridgingModulus: Modulus, slotWidth: Length, way: string): SoftStrip => ({
    way,
    slotWidth,
    ...softStrip(work, leak, bridgingModulus, way),
  });
  const along = stripOf(axialModulus, axialLength, 'strip along the pipe');
  const round = stripOf(hoopModulus, circumferentialWidth, 'strip round the pipe');
  const ring = {
    way: 'ring',
    slotWidth: Math.min(axialLength, circumferentialWidth) as Length,
    stripModulus: Math.min(along.stripModulus, round.stripModulus) as Modulus,
  };
  return { along, round, ring };
}

/** Thickness over a slot by the bound that asks for least; none where no thickness holds the pressure by any of them. */
export function thicknessOverSlot(
  work: Workbook,
  pressure: GaugePressure,
  leak: LeakResistance,
  slot: Slot,
): { readonly thickness: Length | undefined; readonly ceiling: GaugePressure } {
  const { along, round, ring } = boundsOf(work, leak, slot);
  let least: { readonly thickness: Length; readonly way: string } | undefined;
  let ceiling = 0 as GaugePressure;
  for (const strip of [along, round, ring]) {
    const highest = strip === ring ? ceilingOfRing(work, leak, ring) : ceilingOf(work, leak, strip as SoftStrip);
    ceiling = Math.max(ceiling, highest) as GaugePressure;
    if (!(pressure < highest)) continue;
    const thickness =
      strip === ring ? asRing(work, pressure, leak, ring) : asStrip(work, pressure, leak, strip as SoftStrip);
    if (least !== undefined && thickness >= least.thickness) continue;
    least = { thickness, way: strip.way };
  }
  if (least === undefined) return { thickness: undefined, ceiling };
  const { thickness, way } = least;
  decide(work.recorder, `thickness of the ${way}`, 'of three bounds of what can be released over the slot the lowest');
  return { thickness, ceiling };
}

function ceilingOf(work: Workbook, leak: LeakResistance, strip: SoftStrip): GaugePressure {
  const input = {
    slotWidth: strip.slotWidth,
    stripModulus: strip.stripModulus,
    energyReleaseRate: leak.energyReleaseRate,
    serviceFactor: leak.serviceFactor,
    edgeFactor: strip.edgeFactor,
  };
  return step(work.recorder, 'laminate/slot-pressure-ceiling', slotPressureCeiling, input, strip.way);
}

/** The ring is wide beside its thickness: what its overshoot does not hold is half a crack under a rigid block. */
function ceilingOfRing(work: Workbook, leak: LeakResistance, ring: Strip): GaugePressure {
  const input = {
    slotWidth: ring.slotWidth,
    stripModulus: ring.stripModulus,
    energyReleaseRate: leak.energyReleaseRate,
    serviceFactor: leak.serviceFactor,
    turningRoot: 1,
  };
  return step(work.recorder, 'laminate/slot-pressure-ceiling', slotPressureCeiling, input, ring.way);
}

function asStrip(work: Workbook, pressure: GaugePressure, leak: LeakResistance, strip: SoftStrip): Length {
  const input = {
    pressure,
    slotWidth: strip.slotWidth,
    stripModulus: strip.stripModulus,
    shearModulus: leak.shearModulus,
    energyReleaseRate: leak.energyReleaseRate,
    serviceFactor: leak.serviceFactor,
    edgeFactor: strip.edgeFactor,
  };
  return step(work.recorder, 'laminate/thickness-slot', thicknessSlot, input, strip.way);
}

function asRing(work: Workbook, pressure: GaugePressure, leak: LeakResistance, ring: Strip): Length {
  return step(work.recorder, 'laminate/thickness-wide-slot', thicknessWideSlot, {
    pressure,
    outsideDiameter: leak.outsideDiameter,
    slotWidth: ring.slotWidth,
    hoopModulus: leak.hoopModulus,
    stripModulus: ring.stripModulus,
    energyReleaseRate: leak.energyReleaseRate,
    serviceFactor: leak.serviceFactor,
  });
}

/** Pressure that a laid thickness resists over a slot: the highest of what the three bounds leave. */
export function resistanceOverSlot(
  work: Workbook,
  leak: LeakResistance,
  slot: Slot,
  laminateThickness: Length,
): GaugePressure {
  const { along, round, ring } = boundsOf(work, leak, slot);
  const { outsideDiameter, hoopModulus, shearModulus, energyReleaseRate, serviceFactor } = leak;
  const byRing = step(work.recorder, 'laminate/wide-slot-resistance', wideSlotResistance, {
    laminateThickness,
    outsideDiameter,
    slotWidth: ring.slotWidth,
    hoopModulus,
    stripModulus: ring.stripModulus,
    energyReleaseRate,
    serviceFactor,
  });
  let most = byRing;
  for (const strip of [along, round]) {
    const pressure = step(
      work.recorder,
      'laminate/slot-resistance',
      slotResistance,
      {
        laminateThickness,
        slotWidth: strip.slotWidth,
        stripModulus: strip.stripModulus,
        shearModulus,
        energyReleaseRate,
        serviceFactor,
        edgeFactor: strip.edgeFactor,
      },
      strip.way,
    );
    if (pressure > most) most = pressure;
  }
  if (most === byRing) {
    const crossing = { outsideDiameter, laminateThickness, hoopModulus, stripModulus: along.stripModulus };
    step(work.recorder, 'laminate/slot-cross-over', slotCrossOver, crossing, 'strip along the pipe');
    decide(work.recorder, 'held as a ring', 'the slot is so wide that a strip over it would release more');
  }
  return most;
}
