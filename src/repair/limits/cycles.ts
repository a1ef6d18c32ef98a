import { step } from '../../formula/index.js';
import { cyclicFactor, pressureRatio } from '../../laminate/index.js';
import { use, type Workbook } from '../job/workbook.js';

/** f_c, by number and depth of the pressure cycles over the life (cyclic loading); 1 without cycles. */
export function cyclicFactorOf(work: Workbook): number {
  const { cycles } = work.case.loads;
  if (cycles === 'none') return 1;
  const { recorder, rules } = work;
  const rule = use(work, 'cyclic factor f_c', rules.cyclic);
  const { lowestPressure, highestPressure } = cycles;
  const input = {
    cycles: cycles.number,
    pressureRatio: step(recorder, 'laminate/pressure-ratio', pressureRatio, { lowestPressure, highestPressure }),
    slope: rule.slope,
    intercept: rule.intercept,
    freeCycles: rule.freeCycles,
    lastCycles: rule.lastCycles,
  };
  return step(recorder, 'laminate/cyclic-factor', cyclicFactor, input);
}
