import type { RepairDesign } from '../../repair/design/design.js';
import { chosen, type SheetOptions } from '../options.js';
import { crossSection } from './cross-section.js';
import { cureCurve } from './cure-curve.js';
import { elevation } from './elevation.js';
import { DRAWING_WIDTH } from './svg.js';
import { timelineDrawing } from './timeline.js';

/** The drawings of a design. */
export interface RepairDrawings {
  /** Pipe, defect and laminate seen from the side; absent where the design did not get so far. */
  readonly elevation?: string | undefined;
  /** Pipe and laminate cut across; absent where the design did not get so far. */
  readonly crossSection?: string | undefined;
  /** The steps of the job over the hours; absent where the design did not get so far. */
  readonly timeline?: string | undefined;
  /** Only where the temperature of the steel is foreseen over the hours. */
  readonly cure?: string | undefined;
}

/**
 * Every drawing of a design as SVG; what the design did not get as far as has none.
 *
 * @param design made or not
 * @param options units and digits
 */
export function repairDrawings(design: RepairDesign, options: Omit<SheetOptions, 'format'> = {}): RepairDrawings {
  const all = chosen(options);
  return {
    elevation: elevation(design, all),
    crossSection: crossSection(design, all),
    timeline: timelineDrawing(design, all),
    cure: cureCurve(design, all),
  };
}

const SPACE = 16;

/**
 * The drawings one below the other as one SVG; nothing where there is none.
 *
 * @param design made or not
 * @param options units and digits
 */
export function repairDrawing(design: RepairDesign, options: Omit<SheetOptions, 'format'> = {}): string | undefined {
  const all = Object.values(repairDrawings(design, options)).filter((each) => each !== undefined);
  if (all.length === 0) return undefined;
  let y = 0;
  const placed = all.map((svg: string) => {
    const own = svg.replace('<svg ', `<svg y="${y}" `);
    y += Number(/ height="([\d.]+)"/u.exec(svg)?.[1]) + SPACE;
    return own;
  });
  const size = `viewBox="0 0 ${DRAWING_WIDTH} ${y}" width="${DRAWING_WIDTH}" height="${y}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size}>\n<rect width="100%" height="100%" fill="#fff"/>\n${placed.join('\n')}\n</svg>\n`;
}
