import { exactly, line, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { need, use, type Workbook, warnOwner } from '../job/workbook.js';
import { hottestOf } from './temperature.js';

/** The lap shear strength of the bond beside the two least values that are recalled (lap shear strength). */
export function checkBond(work: Workbook): void {
  const { lapShear } = work.rules;
  const { lapShearStrength } = work.case.laminate;
  if (lapShearStrength === undefined) {
    need(
      work,
      'laminate.lapShearStrength',
      'the overlap must be long enough to carry the end load into the pipe through the bond',
      'the maker of the repair system: lap shear tests on the surface preparation that will be used',
    );
    return;
  }
  warnOfHotBond(work);
  const required = use(work, 'lap shear strength required', lapShear.required);
  const least = use(work, 'lap shear strength, least with a warning', lapShear.withWarning);
  if (lapShearStrength < least) {
    work.reasons.push({
      text: 'the lap shear strength of the bond is too low',
      found: exactly('lap shear strength', 'stress', lapShearStrength),
      limit: roundedUp('least lap shear strength', 'stress', least),
      clause: lapShear.withWarning.clause,
    });
  } else if (lapShearStrength < required) {
    const minima = line(
      'The lap shear strength of the bond lies between the two minima that are recalled ({0} and {1}): ask the competent person which one holds.',
      roundedUp('least lap shear strength', 'stress', least),
      roundedUp('lap shear strength required', 'stress', required),
    );
    warnOwner(work, minima, lapShear.required.clause);
  }
}

/** No factor for heat is known for the bond, as there is one for strain: who takes the line back has to know what it is counted on. */
function warnOfHotBond(work: Workbook): void {
  const hottest = hottestOf(work.case);
  if (hottest <= practice.hottestBondAsTested.value) return;
  warnOwner(
    work,
    line(
      'The bond counts with its lap shear strength as it is stated, and the steel may reach {0}, where a bond that was tested in a laboratory holds less: no factor for that is known. Have the maker confirm the strength at that temperature, over the filler too where filler lies under the wrap.',
      exactly('hottest steel', 'temperature', hottest),
    ),
  );
}
