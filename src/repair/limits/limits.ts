import { decide, heading, step } from '../../formula/index.js';
import { leakSeverity, upperTemperatureLimit } from '../../laminate/index.js';
import type { Amount, Temperature } from '../../quantity/index.js';
import type { RuleSet } from '../../rules/index.js';
import type { RepairCase } from '../case/case.js';
import type { AsFound } from '../design/design.js';
import { type Open, open } from '../job/stage.js';
import { need, use, type Workbook, warn } from '../job/workbook.js';

/** What the laminate must stay below. */
export interface Limits {
  readonly upperTemperature: Temperature;
}

/** May the pipe be repaired this way at all: temperature, class, life, bond. */
export function checkLimits(work: Workbook, { found }: { found: AsFound }): Limits | Open {
  heading(work.recorder, 'May it be repaired');
  checkClass(work);
  checkBond(work);
  screenRisk(work, found);
  const upperTemperature = checkTemperature(work, found.throughWall);
  return upperTemperature === undefined ? open : { upperTemperature };
}

function checkTemperature(work: Workbook, leaking: boolean): Temperature | undefined {
  const { rules, case: repairCase } = work;
  const { glassTransition, heatDistortion } = repairCase.laminate;
  const limits: Temperature[] = [];
  const margins = rules.temperatureMargin;
  if (glassTransition !== undefined) {
    limits.push(limitFrom(work, glassTransition, 'glass transition', margins.glassTransition, leaking));
  }
  if (heatDistortion !== undefined) {
    limits.push(limitFrom(work, heatDistortion, 'heat distortion', margins.heatDeflection, leaking));
  }
  if (limits.length === 0) {
    return need(
      work,
      'laminate.glassTransition',
      'the highest design temperature is a margin below the glass transition (or the heat distortion) temperature of the laminate as it is cured on site',
      'the maker of the repair system: qualification report',
    );
  }
  const limit = Math.min(...limits) as Temperature;
  const designTemperature = hottestOf(repairCase);
  if (designTemperature <= limit) return limit;
  work.reasons.push({
    text: 'the design temperature is above the upper temperature limit of the laminate: it would soften',
    found: { name: 'hottest steel, in service or on the day', kind: 'temperature', value: designTemperature },
    limit: { name: 'upper temperature limit', kind: 'temperature', value: limit },
  });
  return undefined;
}

/** The steel may be hotter on the day of the work than in service. */
export function hottestOf({ service, site }: RepairCase): Temperature {
  return Math.max(service.designTemperature, site.pipeTemperature) as Temperature;
}

function limitFrom(
  work: Workbook,
  transitionTemperature: Temperature,
  name: string,
  margins: RuleSet['temperatureMargin']['glassTransition'],
  leaking: boolean,
): Temperature {
  const margin = use(work, `margin to the ${name} temperature`, leaking ? margins.leaking : margins.notLeaking);
  return step(
    work.recorder,
    'laminate/upper-temperature-limit',
    upperTemperatureLimit,
    { transitionTemperature, margin },
    name,
  );
}

function checkClass(work: Workbook): void {
  const { rules, case: repairCase } = work;
  const { service, repair } = repairCase;
  const name = `limits of class ${repair.class}`;
  const limits = use(work, name, rules.classes[repair.class]);
  const { clause } = rules.classes[repair.class];
  const beyond = (what: string, kind: Amount['kind'], value: number, highest: number | null): void => {
    if (highest === null || value <= highest) return;
    work.reasons.push({
      text: `the design ${what} is above what class ${repair.class} covers (${limits.service}): a higher class is needed`,
      found: { name: `design ${what}`, kind, value },
      limit: { name: `highest ${what} of class ${repair.class}`, kind, value: highest },
      clause,
    });
  };
  beyond('pressure', 'gauge pressure', service.designPressure, limits.highestPressure);
  beyond('temperature', 'temperature', service.designTemperature, limits.highestTemperature);
  const classed = limits.highestPressure !== null || repair.class === 3;
  if (classed && repair.class === 1 && service.safetyCritical) {
    work.reasons.push({
      text: 'the line is safety-critical: class 1 covers low-hazard utilities only; class 2 or 3 is needed',
      clause,
    });
  }
  if (classed && repair.class < 3 && (service.phase !== 'liquid' || service.hazards.length > 0)) {
    work.reasons.push({
      text: `the contents are ${service.hazards.length > 0 ? service.hazards.join(' and ') : service.phase}: class ${repair.class} covers ${limits.service} only; class 3 is needed`,
      clause,
    });
  }
  const longest = use(work, 'longest life', rules.longestLife);
  if (repair.life > longest) {
    work.reasons.push({
      text: 'the life asked for is longer than the rule set covers',
      found: { name: 'life of the repair', kind: 'time', value: repair.life },
      limit: { name: 'longest life', kind: 'time', value: longest },
      clause: rules.longestLife.clause,
    });
  }
}

function checkBond(work: Workbook): void {
  const { rules, case: repairCase } = work;
  const { lapShearStrength } = repairCase.laminate;
  if (lapShearStrength === undefined) {
    need(
      work,
      'laminate.lapShearStrength',
      'the overlap must be long enough to carry the end load into the pipe through the bond',
      'the maker of the repair system: lap shear tests on the surface preparation that will be used',
    );
    return;
  }
  const required = use(work, 'lap shear strength required', rules.lapShear.required);
  const least = use(work, 'lap shear strength, least with a warning', rules.lapShear.withWarning);
  if (lapShearStrength < least) {
    work.reasons.push({
      text: 'the lap shear strength of the bond is too low',
      found: { name: 'lap shear strength', kind: 'stress', value: lapShearStrength },
      limit: { name: 'least lap shear strength', kind: 'stress', value: least },
      clause: rules.lapShear.withWarning.clause,
    });
  } else if (lapShearStrength < required) {
    warn(
      work,
      'The lap shear strength of the bond lies between the two minima that are recalled (4 and 5 MPa): ask the competent person which one holds.',
      rules.lapShear.required.clause,
    );
  }
}

/** Screening only: it says how the repair counts, it does not change the design. */
function screenRisk(work: Workbook, found: AsFound): void {
  const { recorder, rules, case: repairCase } = work;
  const { service } = repairCase;
  if (rules.highRisk.si.value === null) return;
  const limits = use(work, 'screening for high risk', rules.highRisk.si);
  if (limits === null) return;
  const why: string[] = [];
  if (service.hazards.length > 0) why.push('hazardous contents');
  if (service.safetyCritical) why.push('safety-critical line');
  if (service.designPressure >= limits.pressure) why.push('design pressure');
  if (service.designTemperature >= limits.highestTemperature) why.push('high design temperature');
  if (service.designTemperature <= limits.lowestTemperature) why.push('low design temperature');
  if (found.holeAtEndOfLife !== undefined) {
    const holeDiameter = found.holeAtEndOfLife;
    const severity = step(recorder, 'laminate/leak-severity', leakSeverity, {
      pressure: service.designPressure,
      holeDiameter,
    });
    if (severity > limits.leakSeverity) why.push('leak severity');
    if (holeDiameter > limits.holeOverDiameter * found.outsideDiameter) why.push('size of the hole');
  }
  if (why.length === 0) return;
  decide(recorder, 'counts as high risk', why.join(', '));
  warn(
    work,
    `The repair counts as high risk (${why.join(', ')}): the full rules apply, none of the simplified ones.`,
    rules.highRisk.si.clause,
  );
}
