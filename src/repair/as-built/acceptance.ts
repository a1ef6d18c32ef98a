import { acceptRepair } from '../../acceptance/index.js';
import { equivalentTime, equivalentTimeLeavesTestedSpan, historyDuration } from '../../cure/index.js';
import { energiesOf } from '../../cure/wait/energy-bounds.js';
import { missingTo } from '../../numeric/index.js';
import { type ActivationEnergy, type Amount, joinLines } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { hoursCountFrom } from '../case/hours-count-from.js';
import type { Designed } from '../design/design.js';
import type { AcceptanceDesign } from '../design/design-work.js';
import { stepAt } from '../timeline/timeline.js';
import { notShown, reaching } from './points.js';
import type { AsBuiltPoint, AsBuiltRecord } from './record.js';

export function firmPoint(design: Designed, { fillerWasFirm }: AsBuiltRecord): AsBuiltPoint[] {
  if (design.case.filler === 'none') return [];
  if (fillerWasFirm === undefined) return [notShown('filler firm', 'nobody recorded that the filler took no print')];
  const text = fillerWasFirm ? 'the filler took no print' : 'the filler still took a print when the wrap began';
  return [{ point: 'filler firm', verdict: fillerWasFirm ? 'meets' : 'does not meet', text }];
}

/** The hours of the steel as hours at the maker's temperature, by the energy that credits least. */
export function curePoint(design: Designed, { cure: steps }: AsBuiltRecord): AsBuiltPoint {
  const { laminate } = design.case;
  const { cure } = laminate;
  if (steps === undefined || steps.length === 0)
    return notShown('cure', 'the temperature over the cure was not recorded');
  if (cure.mechanism === 'moisture') {
    if (steps.some(({ temperature }) => temperature < hoursCountFrom(temperature, laminate)))
      return notShown(
        'cure',
        'the steel was colder than the sample of the transition was cured: nothing tells how early it softens',
      );
    const value = historyDuration({ steps });
    const wait = stepAt(design.timeline, 'cure')?.duration;
    if (wait?.known !== true) return notShown('cure', 'the design knows no time for the cure');
    return reaching('cure', { name: 'time of cure', kind: 'time', value }, wait.time);
  }
  const { referenceTemperature, testedFrom, testedTo, mechanism, activationEnergy } = cure;
  const minimumTemperature = hoursCountFrom(cure.minimumTemperature, laminate);
  const span = { referenceTemperature, testedFrom, testedTo, minimumTemperature, mechanism };
  let value = Number.POSITIVE_INFINITY;
  for (const energy of energiesOf({ activationEnergy })) {
    const history = { ...span, steps, activationEnergy: energy as ActivationEnergy };
    if (equivalentTimeLeavesTestedSpan(history)) {
      return notShown(
        'cure',
        'the steel left the span of temperature in which the maker tested: nothing tells how far the laminate has cured',
      );
    }
    value = Math.min(value, equivalentTime(history).equivalentTime);
  }
  return reaching('cure', { name: "time of cure at the maker's temperature", kind: 'time', value }, cure.cureTime);
}

/** Hardness, surface, bond and pressure test, by the same gate that accepts a repair. */
export function acceptancePoints({ laminate, found, acceptance }: Designed, record: AsBuiltRecord): AsBuiltPoint[] {
  const { hardness, inspection, pressureTest, thickness } = record;
  const { pressureTest: test, hardness: needed } = acceptance;
  const tested = test.medium === 'liquid' || test.medium === 'gas';
  const decided = acceptRepair({
    laminateThickness: thickness ?? laminate.laidThickness,
    throughWall: found.throughWall,
    hardness:
      hardness === undefined
        ? undefined
        : {
            scale: needed?.scale ?? 'Shore D',
            qualifiedHardness: needed?.qualified,
            leastMean: practice.leastMeanHardness.value,
            leastSingle: practice.leastSingleHardness.value,
            ...hardness,
          },
    inspection,
    pressureTest: !tested
      ? 'not required'
      : pressureTest && { requiredPressure: test.pressure, requiredHold: test.hold, ...pressureTest },
  });
  const wanted = ['hardness', 'surface', 'bond', 'pressure test'] as const;
  return wanted.map((point): AsBuiltPoint => {
    if (point === 'pressure test' && !tested) return untested(acceptance);
    const reasons = decided.reasons.filter(({ holdPoint }) => holdPoint === point);
    const [first] = reasons;
    if (first === undefined) return { point, verdict: 'meets', text: `${point}: nothing against it` };
    const failed = reasons.some(({ verdict, found: number }) => verdict !== 'hold' || number !== undefined);
    const numbered = reasons.find(({ found: number, limit }) => number !== undefined && limit !== undefined) ?? first;
    return {
      point,
      verdict: failed ? 'does not meet' : 'not shown',
      ...joinLines(reasons, ' '),
      ...(numbered.found === undefined ? {} : { found: numbered.found }),
      ...(numbered.limit === undefined ? {} : { limit: numbered.limit }),
      ...shortfallOf(numbered.found, numbered.limit),
    };
  });
}

/** How much is missing, where the number had to reach its limit. */
function shortfallOf(found: Amount | undefined, limit: Amount | undefined): { readonly shortfall?: Amount } {
  if (found === undefined || limit === undefined) return {};
  const value = missingTo(found.value, limit.value);
  return value === 0 ? {} : { shortfall: { name: `${found.name}, short by`, kind: found.kind, value } };
}

function untested({ pressureTest: test }: AcceptanceDesign): AsBuiltPoint {
  if (test.medium === 'none') return { point: 'pressure test', verdict: 'meets', text: 'the case asks for none' };
  return notShown('pressure test', 'the case does not say whether the line is tested');
}
