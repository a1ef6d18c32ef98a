import { decide, heading, step } from '../../formula/index.js';
import { wrappedDiameter } from '../../laminate/index.js';
import type { Force, GaugePressure, Length, Modulus, Strain } from '../../quantity/index.js';
import type { AsFound } from '../design/design.js';
import { forceAlong, pressureRound } from '../found/external-force.js';
import type { Workbook } from '../job/workbook.js';
import type { Strains } from '../limits/strains.js';
import { type PlyModuli, pliesAsLaid } from './ply-moduli.js';

/**
 * Half a ring of the wrapped pipe, cut along its axis: the pressure on the circle over the filler pulls it apart, the
 * laminate that goes round there holds it.
 */
export interface HoopSection {
  readonly diameter: Length;
  readonly modulus: Modulus;
  readonly strain: Strain;
  /** The design pressure, with shear and torsion the one that stands for them together. */
  readonly pressure: GaugePressure;
}

/** The pipe cut across its axis: the end load of its outside diameter and the stated force pull it apart. */
export interface AxialSection {
  readonly diameter: Length;
  readonly modulus: Modulus;
  readonly strain: Strain;
  /** With the design pressure. */
  readonly force: Force;
  /** With the pressure that acts round the pipe: for a line that holds both directions by one pressure. */
  readonly forceWithRound: Force;
  /** While the line is without pressure. */
  readonly forceWithoutPressure: Force;
}

/**
 * What every thickness method works on: the two free bodies, and what lies under the laminate.
 *
 * Diameter, force and strength of one equation are of one section. Two lines stay on the circle of the pipe on purpose:
 * - substrate ignored and yielded, along the pipe: the laminate counts with the circumference of the pipe, though over the
 *   defect it lies on the filler: it is asked for more than that section needs;
 * - every line along the pipe: the end load is that of the outside diameter of the pipe, which closes it.
 */
export interface ThicknessJob {
  readonly found: AsFound;
  readonly strains: Strains;
  readonly hoop: HoopSection;
  readonly axial: AxialSection;
  /** As tested, at the angle at which the ply lies: what holds over a leak, whose own factor is that of the warm laminate. */
  readonly asTested: PlyModuli;
}

/**
 * Sets up the two sections. The moduli are the lower ones of test and design temperature, where both are given, at the angle
 * at which the ply lies; none where that angle or what it takes to judge it forbids the laminate.
 */
export function prepareThickness(work: Workbook, found: AsFound, strains: Strains): ThicknessJob | undefined {
  heading(work.recorder, 'Loads on the laminate');
  const { service, laminate } = work.case;
  const { hoopModulus, axialModulus, atDesignTemperature: hot } = laminate;
  const { outsideDiameter } = found;
  const plies = pliesAsLaid(work, outsideDiameter, {
    hoop: Math.min(hoopModulus, hot?.hoopModulus ?? hoopModulus) as Modulus,
    axial: Math.min(axialModulus, hot?.axialModulus ?? axialModulus) as Modulus,
  });
  if (plies === undefined) return undefined;
  const pressure = pressureRound(work, outsideDiameter, service.designPressure);
  const force = forceAlong(work, outsideDiameter, service.designPressure, 'with the design pressure');
  const tested = { hoop: hoopModulus, axial: axialModulus };
  return {
    found,
    strains,
    asTested: hot === undefined ? plies : (pliesAsLaid(work, outsideDiameter, tested) ?? plies),
    hoop: {
      diameter: overFiller(work, outsideDiameter),
      modulus: plies.hoop,
      strain: strains.hoop,
      pressure,
    },
    axial: {
      diameter: outsideDiameter,
      modulus: plies.axial,
      strain: strains.axial,
      force,
      forceWithRound:
        pressure === service.designPressure
          ? force
          : forceAlong(work, outsideDiameter, pressure, 'with the equivalent pressure'),
      forceWithoutPressure: forceAlong(work, outsideDiameter, 0 as GaugePressure, 'while the line is without pressure'),
    },
  };
}

function overFiller(work: Workbook, outsideDiameter: Length): Length {
  const { filler } = work.case;
  if (filler === 'none') return outsideDiameter;
  decide(
    work.recorder,
    'hoop load taken on the diameter over the filler',
    'the diameter of the pipe and twice the filler over the defect: the pressure acts on the larger circle once the metal under it is gone',
  );
  const circle = { outsideDiameter, fillerThickness: filler.thicknessOverDefect };
  return step(work.recorder, 'laminate/wrapped-diameter', wrappedDiameter, circle);
}
