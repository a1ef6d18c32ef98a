import { step } from '../../formula/index.js';
import type { AbsolutePressure, Area, GaugePressure } from '../../quantity/index.js';
import { toAbsolute } from '../../quantity/index.js';
import { gasLeakRate, jetReaction, jetSpeed, liquidLeakRate } from '../../seal/index.js';
import type { Seal } from '../case/case.js';
import type { JetDesign } from '../design/design-work.js';
import type { Workbook } from '../job/workbook.js';

/** What leaves through the open hole, for the safety notes; nothing when the case does not describe the fluid. */
export function describeJet(
  work: Workbook,
  { fluid }: Seal,
  holeArea: Area,
  linePressure: GaugePressure,
): JetDesign | undefined {
  const { recorder } = work;
  if (fluid === undefined || linePressure === 0) return undefined;
  const reaction = step(recorder, 'seal/jet-reaction', jetReaction, { pressureDifference: linePressure, holeArea });
  if (fluid.phase === 'liquid') {
    const jet = { pressureDifference: linePressure, density: fluid.density };
    return {
      reaction,
      speed: step(recorder, 'seal/jet-speed', jetSpeed, jet),
      volumeFlow: step(recorder, 'seal/liquid-leak-rate', liquidLeakRate, { ...jet, holeArea }),
    };
  }
  const outsidePressure: AbsolutePressure = fluid.atmosphere;
  const leak = step(recorder, 'seal/gas-leak-rate', gasLeakRate, {
    insidePressure: toAbsolute(linePressure, outsidePressure),
    outsidePressure,
    temperature: work.case.site.pipeTemperature,
    molarMass: fluid.molarMass,
    heatCapacityRatio: fluid.heatCapacityRatio,
    holeArea,
  });
  return { reaction, massFlow: leak.massFlow, regime: leak.regime };
}
