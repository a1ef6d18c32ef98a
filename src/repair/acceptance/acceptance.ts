import { barcolReadings, findingLimits, tapTest, wrinkleLimit } from '../../acceptance/index.js';
import { heading, step } from '../../formula/index.js';
import type { Length } from '../../quantity/index.js';
import type { AsFound, ExtentDesign, LaminateDesign, MissingInput } from '../design/design.js';
import type { AcceptanceDesign, HardnessDesign, InspectionLimit } from '../design/design-work.js';
import { trial, type Workbook } from '../job/workbook.js';
import { planPressureTest } from './pressure-test.js';

/** Parts of the qualified hardness that the mean and each single reading have to reach. */
const LEAST_MEAN = 0.9;
const LEAST_SINGLE = 0.8;

/** Readings of a Shore durometer. */
const SHORE_READINGS = 5;

const inspection: readonly InspectionLimit[] = /* @__PURE__ */ findingLimits.map(
  ({ feature, where, limit, beyond, remedy, clause }) => ({ feature, where, limit, beyond, remedy, clause }),
);

/** What the finished repair must show before the line goes back to service. */
export function planAcceptance(
  work: Workbook,
  { found, laminate, extent }: { found: AsFound; laminate: LaminateDesign; extent: ExtentDesign },
): AcceptanceDesign {
  heading(work.recorder, 'Acceptance');
  const hardness = hardnessToReach(work);
  const highestWrinkle = step(work.recorder, 'acceptance/wrinkle-limit', wrinkleLimit, {
    laminateThickness: laminate.laidThickness,
  });
  return {
    ...(hardness === undefined ? {} : { hardness }),
    missing: missingFor(work),
    leastThickness: leastThickness(laminate, work.case.laminate.plyThickness),
    leastOverlap: extent.overlap.value,
    highestWrinkle,
    needsSecondMethod: laminate.laidThickness > tapTest.thickestAlone,
    inspection,
    pressureTest: planPressureTest(work, found, laminate),
  };
}

/** Where the least number of plies decides, all of them have to be there: a pipe that needs no laminate still gets its plies. */
function leastThickness({ thickness, laidThickness }: LaminateDesign, plyThickness: Length): Length {
  return laidThickness - thickness.value >= plyThickness ? laidThickness : thickness.value;
}

/** Missing here stops the line from going back to service, not the design. */
function missingFor({ case: { acceptance } }: Workbook): MissingInput[] {
  if (acceptance !== undefined) return [];
  return [
    {
      field: 'acceptance.qualifiedHardness',
      why: 'a repair is accepted by its hardness against the one that the qualification reached; without it nothing is accepted',
      askWhom: 'the maker of the repair system: qualification report',
    },
    {
      field: 'acceptance.pressureTest',
      why: 'whether and with what the finished repair is tested under pressure has to be stated',
      askWhom: 'the owner of the line',
    },
  ];
}

function hardnessToReach(work: Workbook): HardnessDesign | undefined {
  const { acceptance } = work.case;
  if (acceptance === undefined) return undefined;
  const { hardnessScale: scale, qualifiedHardness: qualified } = acceptance;
  const leastMean = LEAST_MEAN * qualified;
  const readings =
    scale === 'Shore D'
      ? SHORE_READINGS
      : trial(work, 'hardness readings', () =>
          step(work.recorder, 'acceptance/barcol-readings', barcolReadings, { hardness: leastMean }),
        ).result;
  return {
    scale,
    qualified,
    leastMean,
    leastSingle: LEAST_SINGLE * qualified,
    ...(readings === undefined ? {} : { readings }),
  };
}
