import type { Designed } from '../../../src/repair/index.js';
import { leadOf } from './equilibrium.js';
import { reaches } from './stated.js';

/** What a wrap costs: the hours of its resin, the plies that end at a joint, the angle of its tape. */
export function wrap(design: Designed): string | undefined {
  if (leadOf(design) > (15 * Math.PI) / 180 + 1e-9) return 'a tape is laid at more than 15 degrees';
  return near(design) ?? works(design) ?? gels(design) ?? joints(design);
}

/** What stands nearest is clear of the laid length on the shorter side. */
function near({ case: { defect }, extent }: Designed): string | undefined {
  const beside = (extent.totalLength - defect.axialLength) / 2;
  return reaches(defect.nearestAttachment ?? 0, beside) ? undefined : 'a weld or a support lies under the laid length';
}

const GAS_CONSTANT = 8.314462618;

/** The resin works as long as it does at the warmest hour that was read or foreseen, and the thermometer may read low. */
function works({ case: { site, laminate }, cures }: Designed): string | undefined {
  const { cure } = laminate;
  if (cure.mechanism !== 'two-part reaction' || cure.activationEnergy === undefined) return undefined;
  const warmest = Math.max(
    site.pipeTemperature,
    site.airTemperature,
    ...(site.history ?? []).map(({ temperature }) => temperature),
    ...(site.forecast ?? []).map(({ pipeTemperature, airTemperature }) => Math.max(pipeTemperature, airTemperature)),
  );
  const behind = warmest + (site.instruments?.temperatureError ?? 0.5);
  const rate = Math.exp((cure.activationEnergy / GAS_CONSTANT) * (1 / cure.referenceTemperature - 1 / behind));
  return reaches((cure.workingTime / rate) * (1 + 1e-6), cures.laminate.workingTime)
    ? undefined
    : 'the resin is given longer than it works at the warmest hour';
}

/** One crew lays a charge; from the first contact to the last turn it takes at most 0.8 of the working time. */
function gels({ rolls, wrap: laid, case: { crew } }: Designed): string | undefined {
  if (crew === undefined) return undefined;
  const laying = rolls.chargeLength / crew.layingSpeed;
  if (rolls.chargeTime === undefined || !reaches(rolls.chargeTime, laying)) return 'a charge is divided between crews';
  if (rolls.fits === true && laying > 0.8 * (rolls.workingTime ?? 0) * (1 + 1e-9))
    return 'the wrap fits with less than a fifth of the working time left';
  const helix = laid.form === 'tape' ? laid.tapeLength / crew.layingSpeed : 0;
  return reaches(rolls.wrapTime ?? 0, helix) ? undefined : 'one helix is divided between crews';
}

/** Bands side by side: at the worst place along the pipe as many plies go through as what needs them asks for. */
function joints({ wrap: laid, laminate, extent, case: stated }: Designed): string | undefined {
  if (laid.form === 'tape' || stated.wrap.width >= extent.totalLength) return undefined;
  if (laminate.joints === undefined) return 'bands lie side by side, and no joint is counted';
  const { carryingPlies, lostPlies } = laminate.joints;
  if (lostPlies < 1 || carryingPlies + lostPlies > laminate.plies) return 'at a joint more plies carry than go through';
  const along = laminate.thickness.candidates
    .filter(({ criterion }) => /axial|leak|both/u.test(criterion))
    .reduce((most, { value }) => Math.max(most, value), 0);
  if (!reaches(carryingPlies * stated.laminate.plyThickness, along))
    return 'at a joint fewer plies go through than are needed along the pipe';
  return undefined;
}
