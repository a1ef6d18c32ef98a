import { heading, step } from '../../formula/index.js';
import { pressureFromOutside, soilPressure } from '../../pipe/index.js';
import type { GaugePressure, Length } from '../../quantity/index.js';
import type { Workbook } from '../job/workbook.js';

/** What presses on the pipe from outside while it is empty, and the part of it that lies on its top. */
export interface OutsideLoad {
  readonly outsidePressure: GaugePressure;
  readonly soilPressure: GaugePressure;
}

/** Vacuum, free water, soil, traffic and ground water; nothing where the case states none of them. */
export function outsideLoadOf(work: Workbook): OutsideLoad | undefined {
  const { externalPressure: stated, soil } = work.case.loads;
  const externalPressure = stated === 'none' ? (0 as GaugePressure) : stated;
  if (soil === 'none' && externalPressure === 0) return undefined;
  heading(work.recorder, 'What presses on the pipe from outside');
  const onTop =
    soil === 'none'
      ? (0 as GaugePressure)
      : step(work.recorder, 'pipe/soil-pressure', soilPressure, {
          cover: soil.cover,
          density: soil.density,
          traffic: soil.traffic === 'none' ? (0 as GaugePressure) : soil.traffic,
        });
  const waterAbove = soil === 'none' || soil.waterAbove === 'none' ? (0 as Length) : soil.waterAbove;
  const all = { externalPressure, soilPressure: onTop, waterAbove };
  const outsidePressure = step(work.recorder, 'pipe/pressure-from-outside', pressureFromOutside, all);
  return { outsidePressure, soilPressure: onTop };
}
