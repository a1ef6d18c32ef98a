import { acceptRepair, type HoldPoint, type PressureTestRecord } from '../../acceptance/index.js';
import { coldestBehindHistory, equivalentTime, equivalentTimeLeavesTestedSpan } from '../../cure/index.js';
import { energiesOf } from '../../cure/wait/energy-bounds.js';
import type { ActivationEnergy, GaugePressure, Time } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { hoursCountFrom } from '../case/hours-count-from.js';
import type { Designed } from '../design/design.js';
import type { PressureTestDesign } from '../design/design-work.js';
import { coldestSteel, thermometerErrorOf } from '../mix-and-cure/steel-temperatures.js';
import { type Against, byAcceptance, pointBy } from './against.js';
import { moistureCurePoint } from './moisture-cure.js';
import { notShown, reaching } from './points.js';
import { beyondTest, coolingOfOther, fallUnsaid } from './pressure-test.js';
import type { AsBuiltPoint, AsBuiltRecord } from './record.js';
import { seenTrue } from './seal.js';

export function firmPoint(design: Designed, { fillerWasFirm }: AsBuiltRecord): AsBuiltPoint[] {
  if (design.case.filler === 'none') return [];
  const firm = seenTrue('filler firm', fillerWasFirm, {
    open: 'nobody recorded that the filler took no print',
    good: 'the filler took no print',
    bad: 'the filler still took a print when the wrap began',
  });
  return [firm];
}

/** The hours of the steel, as cold as the thermometer allows, as hours at the maker's temperature, by the energy that credits least. */
export function curePoint(design: Designed, { cure: steps }: AsBuiltRecord): AsBuiltPoint {
  const { laminate } = design.case;
  const { cure } = laminate;
  if (steps === undefined || steps.length === 0)
    return notShown('cure', 'the temperature over the cure was not recorded');
  if (cure.mechanism === 'moisture') return moistureCurePoint(design, cure, steps);
  const error = thermometerErrorOf(design.case.site);
  const foreseen = coldestSteel(design.case.site);
  if (steps.some(({ temperature }) => temperature < cure.minimumTemperature && temperature < foreseen))
    return notShown(
      'cure',
      'the steel was colder than the resin cures, and colder than the design foresaw: nothing tells what became of it',
    );
  const { steps: coldest } = coldestBehindHistory({ steps, error });
  const { referenceTemperature, testedFrom, testedTo, mechanism, activationEnergy } = cure;
  const minimumTemperature = hoursCountFrom(cure.minimumTemperature, laminate);
  const span = { referenceTemperature, testedFrom, testedTo, minimumTemperature, mechanism };
  let value = Number.POSITIVE_INFINITY;
  for (const energy of energiesOf({ activationEnergy })) {
    const history = { ...span, steps: coldest, activationEnergy: energy as ActivationEnergy };
    if (equivalentTimeLeavesTestedSpan({ ...history, steps })) {
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
export function acceptancePoints(
  design: Designed,
  record: AsBuiltRecord,
  requiredPressure = design.acceptance.pressureTest.pressure,
): AsBuiltPoint[] {
  const { laminate, found, acceptance } = design;
  const { hardness, inspection, pressureTest, thickness } = record;
  const { pressureTest: test, hardness: needed } = acceptance;
  const isAsked = test.medium === 'liquid' || test.medium === 'gas';
  const required = isAsked ? { ...test, pressure: requiredPressure } : NOT_REQUIRED;
  const unmade = isAsked ? undefined : 'not required';
  const decided = acceptRepair({
    laminateThickness: thickness ?? laminate.laidThickness,
    throughWall: found.throughWall,
    hardness:
      // Readings on another scale, or on none, are no readings.
      hardness === undefined || needed === undefined || hardness.scale !== needed.scale
        ? undefined
        : {
            scale: needed.scale,
            qualifiedHardness: needed.qualified,
            leastMean: practice.leastMeanHardness.value,
            leastSingle: practice.leastSingleHardness.value,
            readings: hardness.readings,
            hasStopped: hardness.hasStopped,
          },
    inspection,
    pressureTest: pressureTest === undefined ? unmade : made(required, pressureTest),
  });
  const against = (point: HoldPoint): Against[] =>
    decided.reasons.filter(({ holdPoint }) => holdPoint === point).map(byAcceptance);
  const seen = (['hardness', 'surface', 'bond'] as const).map((point) =>
    pointBy(point, against(point), `${point}: nothing against it`),
  );
  const tested = [
    ...against('pressure test'),
    ...beyondTest(design, record),
    ...coolingOfOther(design, record),
    ...fallUnsaid(record),
    ...(test.medium === 'not stated' ? [notStated()] : []),
  ];
  return [...seen, pointBy('pressure test', tested, isAsked ? 'pressure test: nothing against it' : NOT_ASKED)];
}

const NOT_ASKED = 'the case asks for none';

function notStated(): Against {
  return { verdict: 'not shown', says: { text: 'The case does not say whether the line is tested.' } };
}

/** A test that nobody asked for need reach nothing, and still may not leak. */
const NOT_REQUIRED = { pressure: 0 as GaugePressure, hold: 0 as Time };

function made(
  { pressure, hold }: Pick<PressureTestDesign, 'pressure' | 'hold'>,
  { lowestPressure, hold: held, leak, fall }: NonNullable<AsBuiltRecord['pressureTest']>,
): PressureTestRecord {
  return { requiredPressure: pressure, requiredHold: hold, lowestPressure, hold: held, leak, fall };
}
