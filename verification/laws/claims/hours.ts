import type { Designed } from '../../../src/repair/index.js';

/** The order of the work, and that no hour rests on a wait that nobody knows. */

/** As the work is done: each after the one before it. */
const ORDER = [
  'permit',
  'survey',
  'rough-cleaning',
  'seal',
  'putty',
  'surface',
  'gate',
  'filler',
  'filler-wait',
  'surface-again',
  'wrap',
  'cure',
  'inspection',
  'pressure-test',
  'return',
] as const;

export function hours(design: Designed): string | undefined {
  const { timeline, site, case: stated } = design;
  let before = 0;
  for (const id of ORDER) {
    const step = timeline.steps.find((each) => each.id === id);
    if (step === undefined) continue;
    if (step.startsAt < before * (1 - 1e-12)) return `${id} begins before the step ahead of it is done`;
    const least = step.duration.known ? step.duration.time : (step.duration.atLeast ?? 0);
    if (Math.abs(step.endsAt - step.startsAt - least) > 1e-6) return `${id} ends at another hour than it takes`;
    before = step.endsAt;
  }
  const [bare, resin] = [
    timeline.steps.find(({ id }) => id === 'surface'),
    timeline.steps.find(({ id }) => id === 'wrap'),
  ];
  const again = timeline.steps.find(({ id }) => id === 'surface-again');
  const lies = (resin?.startsAt ?? 0) - (bare?.endsAt ?? 0);
  if (lies > FOUR_HOURS && (again === undefined || again.duration.known))
    return 'the steel lies bare for more than four hours and is not prepared again';
  const unknown = timeline.steps.find(({ duration }) => !duration.known);
  if (timeline.earliestReturn.known && unknown !== undefined) return `the return is known and ${unknown.id} is not`;
  const at = (id: string) => timeline.steps.find((each) => each.id === id);
  const from = at('gate')?.endsAt ?? 0;
  const to = at('cure')?.endsAt ?? 0;
  const holds = site.holdTime.known ? site.holdTime.time : (site.holdTime.atLeast ?? 0);
  if (Math.abs(holds - (to - from)) > 1e-6)
    return 'the climate has to hold for another time than from the gate to the cure';
  return uncured(design) ?? damp(stated.site.forecast, from, to, site.weather);
}

const FOUR_HOURS = 4 * 3600;
const GAS_CONSTANT = 8.314462618;

/**
 * What waits over foreseen hours has cured by then: the hours from when it was laid, each by its own rate, add up; the thermometer
 * may read high.
 */
function uncured({ case: { site }, cures, timeline }: Designed): string | undefined {
  const foreseen =
    site.history ?? site.forecast?.map(({ duration, pipeTemperature }) => ({ duration, temperature: pipeTemperature }));
  const off = site.instruments?.temperatureError ?? 0.5;
  if (foreseen === undefined) return undefined;
  for (const { takes, startsAt, endsAt, duration } of timeline.steps) {
    if (!('cure' in takes) || !duration.known) continue;
    const cure = cures[takes.cure];
    if (cure === 'none' || cure.law.sort !== 'over the history') continue;
    const { requiredTime, referenceTemperature, activationEnergy, minimumTemperature } = cure.law;
    if (activationEnergy === undefined) continue;
    let [begins, cured] = [0, 0];
    for (const { duration: hours, temperature: reading } of foreseen) {
      const temperature = reading - off;
      const during = Math.max(0, Math.min(endsAt, begins + hours) - Math.max(startsAt, begins));
      const rate = Math.exp((activationEnergy / GAS_CONSTANT) * (1 / referenceTemperature - 1 / temperature));
      if (temperature >= minimumTemperature) cured += during * rate;
      begins += hours;
    }
    if (cured < requiredTime * (1 - 1e-6)) return `the ${takes.cure} has not cured by the end of its wait`;
  }
  return undefined;
}

/** No weather lets the work begin over an hour that is too damp. */
function damp(
  forecast: Designed['case']['site']['forecast'],
  from: number,
  to: number,
  weather: string,
): string | undefined {
  let begins = 0;
  for (const { duration, relativeHumidity } of forecast ?? []) {
    const ends = begins + duration;
    if (weather === 'go' && relativeHumidity > 0.85 && begins < to * (1 - 1e-9) && ends > from * (1 + 1e-9))
      return 'the gate says GO over an hour that is too damp';
    begins = ends;
  }
  return undefined;
}
