import type { Designed, WorkPlan } from '../../../src/repair/index.js';
import { atWork } from './stated.js';

/** Work on a line under pressure: what is asked, what is refused, what the crew reads first. */

const SAYS_NOTHING = /^\s*(?:none|tbd|n\/?a|-|)\s*$/iu;

export function liveLine(design: Designed, { alerts }: WorkPlan): string | undefined {
  const { case: stated, seal } = design;
  const { line, service, defect, site } = stated;
  const pressure = atWork(stated);
  if (line.state === 'empty, dry, isolated, vented') return undefined;
  const hazardous = service.phase !== 'liquid' || service.hazards.length > 0;
  if (hazardous && SAYS_NOTHING.test(line.writtenProcedure))
    return 'gas or a hazard under pressure, and no written procedure';
  if (pressure > 0) {
    const [first] = alerts;
    if (first === undefined || !first.text.includes('LINE STAYS UNDER PRESSURE'))
      return 'the plan does not begin with the pressure of the line';
  }
  if (defect.kind !== 'through-wall hole' || pressure === 0) return undefined;
  if (seal === 'none') return 'a live leak is designed without a seal';
  if (hazardous) return 'a live leak of gas or of a hazard is sealed by hand';
  if (pressure > 7e5) return 'a live leak is sealed by hand above 7 bar';
  if (site.pipeTemperature > 333.15) return 'a live leak is sealed by hand above 60 degC';
  if (2 * pressure * (Math.PI / 4) * (defect.holeDiameter ?? 0) ** 2 > 200 * (1 + 1e-9))
    return 'a jet above 200 N is met by hand';
  if (pressure > seal.highestPressure) return 'the seal is attempted above its highest pressure';
  const bandsOff = stated.seal?.bands !== 'left';
  if (bandsOff && line.state === 'under pressure') return 'putty alone holds a leak under a pump';
  return undefined;
}
