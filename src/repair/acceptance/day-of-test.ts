import { decide, heading } from '../../formula/index.js';
import type { CorrosionRate, GaugePressure } from '../../quantity/index.js';
import type { RepairCase } from '../case/case.js';
import type { LaminateDesign } from '../design/design.js';
import { assessPipe } from '../found/as-found.js';
import { openWorkbook } from '../job/open-workbook.js';
import { open, stage } from '../job/stage.js';
import type { Workbook } from '../job/workbook.js';
import { rateLaid } from '../laminate/rate-laid.js';
import { checkLimits } from '../limits/limits.js';
import { allowStrains } from '../limits/strains.js';

/**
 * The pressure that the laid laminate resists on the day of the test, by the lines that made the design: temperature
 * factor and mismatch at the temperature of the test, the wall and the hole of today. Where the lines do not reach that day, what
 * it resists at the end of its life is all that is known.
 */
export function resistanceOnDayOfTest(work: Workbook, laminate: LaminateDesign): GaugePressure {
  const atEnd = laminate.resistance.value;
  const today = caseOfToday(work.case);
  // With what the case confirms in them already.
  const { rules } = work;
  // What the day says of its own, warnings and missing inputs, the design has said: only the pressure is asked for.
  const silent = openWorkbook(today, { rules });
  const found = stage(silent, 'pipe as found', {}, assessPipe);
  const limits = stage(silent, 'limits of the repair', { found }, checkLimits);
  heading(work.recorder, 'Pressure test: what the laid laminate resists on that day');
  decide(
    work.recorder,
    'the lines of the design at the temperature of the pipe, with the wall and the hole of today',
    'on the day of the test nothing has grown yet, and the pipe is as warm as it is read',
  );
  const shown = openWorkbook(today, { rules }, work.recorder);
  const strains = stage(shown, 'allowable strain', { limits }, allowStrains);
  const resistance = stage(shown, 'the laid laminate on the day of the test', { found, strains }, (_, parts) =>
    rateLaid(shown, parts.found, parts.strains, laminate, laminate.laidThickness, today.laminate.plyThickness),
  );
  // The design holds these loads at the hottest steel, where it is weakest; should the day leave nothing for a pressure, none is put on.
  if (shown.reasons.length > 0) return 0 as GaugePressure;
  return resistance === open ? atEnd : resistance.value;
}

/** The case as it stands on the day: as warm as it is read, and nothing grown. */
function caseOfToday(repairCase: RepairCase): RepairCase {
  const { service, defect, site } = repairCase;
  return {
    ...repairCase,
    confirmed: undefined,
    service: { ...service, designTemperature: site.pipeTemperature, lowestTemperature: undefined },
    defect: {
      ...defect,
      growth: { depth: 0 as CorrosionRate, length: 0 as CorrosionRate },
      holeAtEndOfLife: undefined,
    },
  };
}
