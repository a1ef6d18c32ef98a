import { decide, step } from '../../formula/index.js';
import { upperTemperatureLimit } from '../../laminate/index.js';
import { reaches, settled } from '../../numeric/index.js';
import { exactly, roundedDown, type Temperature } from '../../quantity/index.js';
import type { RuleSet } from '../../rules/index.js';
import type { RepairCase } from '../case/case.js';
import { need, use, type Workbook } from '../job/workbook.js';

/** The upper temperature limit of the laminate, a margin below its transition (ISO 24817, 7.5.3), where the steel keeps it. */
export function checkTemperature(work: Workbook, leaking: boolean): Temperature | undefined {
  const limit = upperLimit(work, leaking);
  if (limit === undefined) return undefined;
  const hottest = hottestOf(work.case);
  if (reaches(limit, hottest)) return limit;
  work.reasons.push({
    text: 'the design temperature is above the upper temperature limit of the laminate: it would soften',
    found: exactly('hottest steel, in service or on the day', 'temperature', hottest),
    limit: roundedDown('upper temperature limit', 'temperature', limit),
  });
  return undefined;
}

/** The steel may be hotter on the day of the work than in service. */
export function hottestOf({ service, site }: RepairCase): Temperature {
  return Math.max(service.designTemperature, site.pipeTemperature) as Temperature;
}

/** The hottest steel, held to a limit that it may reach: the limit itself where only the rounding of two units lies between. */
export function hottestUpTo(repairCase: RepairCase, limit: Temperature): Temperature {
  return settled(hottestOf(repairCase), limit) as Temperature;
}

/** Below the glass transition, dry and wet, and the heat distortion temperature, whichever gives least. */
function upperLimit(work: Workbook, leaking: boolean): Temperature | undefined {
  const { glassTransition, wetGlassTransition, heatDistortion } = work.case.laminate;
  const { glassTransition: glass, heatDeflection } = work.rules.temperatureMargin;
  const limits: Temperature[] = [];
  for (const [transition, name, margins] of [
    [glassTransition, 'glass transition', glass],
    [wetGlassTransition, 'wet glass transition', glass],
    [heatDistortion, 'heat distortion', heatDeflection],
  ] as const)
    if (transition !== undefined) limits.push(limitFrom(work, transition, name, margins, leaking));
  if (limits.length > 0) {
    if (wetGlassTransition === undefined)
      decide(
        work.recorder,
        'the transition counts as it is stated',
        'the case gives none of a wet sample, which softens earlier: ask the maker where the laminate stays wet',
      );
    return Math.min(...limits) as Temperature;
  }
  return need(
    work,
    'laminate.glassTransition',
    'the highest design temperature is a margin below the glass transition (or the heat distortion) temperature of the laminate as it is cured on site',
    'the maker of the repair system: qualification report',
  );
}

function limitFrom(
  work: Workbook,
  transitionTemperature: Temperature,
  name: string,
  margins: RuleSet['temperatureMargin']['glassTransition'],
  leaking: boolean,
): Temperature {
  const margin = use(work, `margin to the ${name} temperature`, leaking ? margins.leaking : margins.notLeaking);
  const transition = { transitionTemperature, margin };
  return step(work.recorder, 'laminate/upper-temperature-limit', upperTemperatureLimit, transition, name);
}
