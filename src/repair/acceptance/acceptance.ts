import { findingLimits, leastThickness, tapTest, wrinkleLimit } from '../../acceptance/index.js';
import { heading, step } from '../../formula/index.js';
import type { AsFound, ExtentDesign, LaminateDesign, MissingInput } from '../design/design.js';
import type { AcceptanceDesign, InspectionLimit } from '../design/design-work.js';
import type { Workbook } from '../job/workbook.js';
import { planHardness } from './hardness.js';
import { planPressureTest } from './pressure-test.js';

const inspection: readonly InspectionLimit[] = /* @__PURE__ */ findingLimits.map(
  ({ feature, where, limit, beyond, remedy, clause }) => ({ feature, where, limit, beyond, remedy, clause }),
);

/** What the finished repair must show before the line goes back to service. */
export function planAcceptance(
  work: Workbook,
  { found, laminate, extent }: { found: AsFound; laminate: LaminateDesign; extent: ExtentDesign },
): AcceptanceDesign {
  const { recorder, case: repairCase } = work;
  heading(recorder, 'Acceptance');
  const hardness = planHardness(work);
  return {
    ...(hardness === undefined ? {} : { hardness }),
    missing: missingFor(work),
    leastThickness: step(recorder, 'acceptance/least-thickness', leastThickness, {
      requiredThickness: laminate.thickness.value,
      leastPlies: laminate.leastPlies,
      plyThickness: repairCase.laminate.plyThickness,
      systemPly: repairCase.laminate.plyThickness,
    }),
    leastOverlap: extent.overlap.value,
    highestWrinkle: step(recorder, 'acceptance/wrinkle-limit', wrinkleLimit, {
      laminateThickness: laminate.laidThickness,
    }),
    needsSecondMethod: laminate.laidThickness > tapTest.thickestAlone,
    inspection,
    pressureTest: planPressureTest(work, found, laminate),
  };
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
