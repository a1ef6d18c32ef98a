import { reaches } from '../../numeric/index.js';
import { type Amount, exactly, roundedDown } from '../../quantity/index.js';
import type { ClassLimits } from '../../rules/index.js';
import { use, type Workbook } from '../job/workbook.js';

/** Pressure, temperature, duty and contents that the class of the repair covers (ISO 24817, repair classes). */
export function checkClass(work: Workbook): void {
  const { rules, case: repairCase } = work;
  const { service, repair } = repairCase;
  const limits = use(work, `limits of class ${repair.class}`, rules.classes[repair.class]);
  const { clause } = rules.classes[repair.class];
  const beyond = (
    what: string,
    kind: Amount['kind'],
    value: number,
    highest: number | null,
    covers: (each: ClassLimits) => boolean,
  ): void => {
    if (highest === null || covers(limits)) return;
    const [enough] = Object.entries(rules.classes).flatMap(([name, each]) => (covers(each.value) ? [name] : []));
    work.reasons.push({
      text: `the design ${what} is above what class ${repair.class} covers (${limits.service}): class ${enough} is needed`,
      found: exactly(`design ${what}`, kind, value),
      limit: roundedDown(`highest ${what} of class ${repair.class}`, kind, highest),
      clause,
    });
  };
  const { designPressure, designTemperature } = service;
  beyond('pressure', 'gauge pressure', designPressure, limits.highestPressure, (each) =>
    isWithin(designPressure, each.highestPressure),
  );
  beyond('temperature', 'temperature', designTemperature, limits.highestTemperature, (each) =>
    isWithin(designTemperature, each.highestTemperature, each.mayReachTemperature),
  );
  if (service.safetyCritical && !limits.safetyCritical) {
    work.reasons.push({
      text: 'the line is safety-critical: class 1 covers low-hazard utilities only; class 2 or 3 is needed',
      clause,
    });
  }
  if ((service.phase !== 'liquid' || service.hazards.length > 0) && !limits.gasOrHazard) {
    work.reasons.push({
      text: `the contents are ${service.hazards.length > 0 ? service.hazards.join(' and ') : service.phase}: class ${repair.class} covers ${limits.service} only; class 3 is needed`,
      clause,
    });
  }
}

function isWithin(value: number, highest: number | null, mayReach = true): boolean {
  if (highest === null) return true;
  return mayReach ? reaches(highest, value) : !reaches(value, highest);
}

/** The longest life for which the rule set says anything. */
export function checkLife(work: Workbook): void {
  const { longestLife } = work.rules;
  const { life } = work.case.repair;
  const longest = use(work, 'longest life', longestLife);
  if (life <= longest) return;
  work.reasons.push({
    text: 'the life asked for is longer than the rule set covers',
    found: exactly('life of the repair', 'time', life),
    limit: roundedDown('longest life', 'time', longest),
    clause: longestLife.clause,
  });
}
