import { thermometerError } from './cure.js';
import type { CureSheet, Job } from './read-job.js';
import { type Schedule, stepOf } from './schedule.js';

/** Magnus over water and over ice after Sonntag and WMO-No. 8 (cure-and-site.md, 3.1); degC and hPa. */
const saturation = (c: number): number => 6.112 * Math.exp((17.62 * c) / (243.12 + c));
const overIce = (c: number): number => 6.112 * Math.exp((22.46 * c) / (272.62 + c));

const pressureShare = (c: number, humidity: number): number => Math.log((humidity * saturation(c)) / 6.112);

/** Dew point in degC, over water whatever the cold. */
function dewPointOf(c: number, humidity: number): number {
  const g = pressureShare(c, humidity);
  return (243.12 * g) / (17.62 - g);
}

/** Where moisture settles: the dew point, and below freezing the frost point, which lies higher. */
function settlingPointOf(c: number, humidity: number): number {
  const g = pressureShare(c, humidity);
  return g >= 0 ? (243.12 * g) / (17.62 - g) : (272.62 * g) / (22.46 - g);
}

/** Humidity at steel of a temperature under air of a dew or frost point. */
function atSteelOf(dew: number, steel: number): number {
  return (dew >= 0 ? saturation(dew) : overIce(dew)) / saturation(steel);
}

/** Air and steel at an hour, as they are read. */
interface Hour {
  readonly steel: number;
  readonly air: number;
  readonly humidity: number;
}

/** What a checked hygrometer reaches (3.1: 3 per cent). */
const HUMIDITY_ERROR = 0.03;
const MARGIN = 3;
const HIGHEST_HUMIDITY = 0.85;
const SALTS = 20e-6;
/** One reading of salts is good to so much either way (3.5: 8.2 mg/m2). */
const SALTS_ERROR = 8.2e-6;
const LEAST_PROFILE = 60e-6;

interface Worst {
  readonly frost: boolean;
  readonly margin: number;
  readonly humidity: number;
  readonly atSteel: number;
  readonly coldest: number;
}

/** The numbers of an hour with every instrument against the crew. */
function worstOf({ steel, air, humidity }: Hour, error: number, humidityError: number): Worst {
  const dew = settlingPointOf(air - 273.15 + error, Math.min(1, humidity + humidityError));
  const coldest = steel - error;
  return {
    frost: dew < 0,
    margin: coldest - 273.15 - dew,
    humidity,
    atSteel: atSteelOf(dew, coldest - 273.15),
    coldest,
  };
}

/** The coldest at which every resin of the job still cures. */
function resinNeeds(sheets: readonly (CureSheet | undefined)[]): number | undefined {
  const needs = sheets.flatMap((sheet) =>
    sheet === undefined
      ? []
      : sheet.mechanism === 'moisture'
        ? [Math.min(...sheet.rows.map((row) => row.temperature))]
        : [sheet.minimumTemperature],
  );
  return needs.length === 0 ? undefined : Math.max(...needs);
}

/** Grades by their method, each list from the poorest to the best; grades of two methods are not compared (3.3). */
const GRADES = [['Sa 1', 'Sa 2', 'Sa 2 1/2', 'Sa 3'], ['St 2', 'St 3'], ['SP 11']];

function gradeMeets(found: string, required: string): boolean {
  const family = GRADES.find((each) => each.includes(required)) as string[];
  return family.includes(found) && family.indexOf(found) >= family.indexOf(required);
}

type Decision = 'go' | 'wait' | 'stop';

function gravest(decisions: readonly Decision[]): Decision {
  return decisions.includes('stop') ? 'stop' : decisions.includes('wait') ? 'wait' : 'go';
}

export function siteOf(job: Job, schedule: Schedule | undefined, throughWall: boolean): Record<string, unknown> {
  const { site } = job;
  const error = thermometerError(job);
  const humidityError = site.instruments?.humidityError ?? HUMIDITY_ERROR;
  const now: Hour = { steel: site.pipeTemperature, air: site.airTemperature, humidity: site.relativeHumidity };
  // Without a timeline the readings of the day alone are judged.
  const gate = schedule === undefined ? 0 : stepOf(schedule, 'gate').startsAt;
  const cured = schedule === undefined ? 0 : stepOf(schedule, 'cure').endsAt;
  // At the surface again the climate is read anew: what that check takes is no hour of the cure that nobody looked at.
  const between = ['filler', 'filler-wait', 'wrap', 'cure'];
  const known = schedule?.steps.every(({ id, duration }) => !between.includes(id) || duration.known);
  const checked = schedule?.steps.every(({ id, duration }) => id !== 'surface-again' || duration.known);
  const hold = cured - gate;

  // The reading stands for the first step of the forecast until that step ends; each later step from its beginning.
  let begins = 0;
  const hours: { readonly from: number; readonly at: number; readonly to: number; readonly hour: Hour }[] = [];
  for (const [index, step] of (schedule === undefined ? [] : (site.forecast ?? [])).entries()) {
    const to = begins + step.duration;
    const at = index === 0 ? to - 1 : begins;
    hours.push({
      from: begins,
      at,
      to,
      hour: { steel: step.pipeTemperature, air: step.airTemperature, humidity: step.relativeHumidity },
    });
    begins = to;
  }
  const first = hours[0];
  const over = (from: number, to: number): readonly Hour[] => [
    ...(first === undefined || from < first.at ? [now] : []),
    ...hours.filter((each) => each.from <= to && each.to > from).map((each) => each.hour),
  ];
  // Behind the wait of a putty the gate has the hour that the forecast gives it.
  const seen = over(gate, cured);
  const atGate = seen[0] ?? now;
  const dew = dewPointOf(atGate.air - 273.15, atGate.humidity);
  const highest = settlingPointOf(atGate.air - 273.15 + error, Math.min(1, atGate.humidity + humidityError));
  const needs = resinNeeds([job.filler?.cure, job.laminate.cure]);
  const all = (seen.length === 0 ? [now] : seen).map((hour) => worstOf(hour, error, humidityError));
  const passes = (list: readonly Worst[]): boolean =>
    list.every(
      ({ margin, humidity, atSteel, coldest }) =>
        margin >= MARGIN &&
        humidity <= HIGHEST_HUMIDITY &&
        atSteel <= HIGHEST_HUMIDITY &&
        coldest > 273.15 &&
        (needs === undefined || coldest >= needs),
    );
  const starts = [gate, ...hours.map(({ at }) => at).filter((at) => at > gate)];
  const earliestStart = starts.find(
    (from) =>
      (first === undefined || from + hold <= begins) &&
      passes(over(from, from + hold).map((hour) => worstOf(hour, error, humidityError))),
  );
  const { surface } = site;
  const qualified = surface?.qualified;
  const requiredProfile = qualified?.profile ?? LEAST_PROFILE;
  const requiredGrade = qualified?.grade ?? 'Sa 2 1/2';
  const coldest = Math.min(...all.map((each) => each.coldest));
  const worst = all.reduce((a, b) => (b.margin < a.margin ? b : a));
  const humid = Math.max(...all.map((each) => each.humidity));
  const atSteel = Math.max(...all.map((each) => each.atSteel));
  // A later hour of the forecast may do; where none does, nobody need wait for it.
  const later =
    site.forecast === undefined ||
    (schedule === undefined
      ? site.forecast.some((step) =>
          passes([
            worstOf(
              { steel: step.pipeTemperature, air: step.airTemperature, humidity: step.relativeHumidity },
              error,
              humidityError,
            ),
          ]),
        )
      : earliestStart !== undefined || begins < gate + hold);
  const climate = (holds: boolean): Decision => (holds ? 'go' : later ? 'wait' : 'stop');
  const weather: Row[] = [
    {
      check: worst.frost ? 'steel above the frost point' : 'steel above the dew point',
      decision: climate(worst.margin >= MARGIN),
      found: worst.margin,
      limit: MARGIN,
    },
    {
      check: 'humidity of the air',
      decision: climate(humid <= HIGHEST_HUMIDITY),
      found: humid,
      limit: HIGHEST_HUMIDITY,
    },
    {
      check: 'humidity at the steel',
      decision: climate(atSteel <= HIGHEST_HUMIDITY),
      found: atSteel,
      limit: HIGHEST_HUMIDITY,
    },
    {
      check: 'steel not too cold for the resin',
      decision: climate(needs === undefined || coldest >= needs),
      found: coldest,
      ...(needs === undefined ? {} : { limit: needs }),
    },
    { check: 'no ice on the steel', decision: climate(coldest > 273.15), found: coldest, limit: 273.15 },
  ];
  if (site.forecast === undefined) {
    weather.push({ check: 'forecast', decision: 'wait', ...(schedule === undefined ? {} : { limit: hold }) });
  }
  const unknown = schedule === undefined || !known;
  if (unknown) weather.push({ check: 'forecast to the end of the cure', decision: 'wait' });
  if (schedule !== undefined && first !== undefined && begins < gate + hold) {
    weather.push({ check: 'forecast long enough', decision: 'wait', found: begins - 1 - gate, limit: hold });
  }
  const steel: Row[] = [];
  if (surface === undefined) steel.push({ check: 'steel prepared', decision: 'wait', limit: requiredProfile });
  else {
    steel.push(
      { check: 'preparation grade', decision: gradeMeets(surface.grade, requiredGrade) ? 'go' : 'stop' },
      {
        check: 'profile',
        decision: surface.profile >= requiredProfile * (1 - 1e-12) ? 'go' : 'stop',
        found: surface.profile,
        limit: requiredProfile,
      },
    );
    const { salts } = surface;
    if (salts !== undefined) {
      const decision = salts > SALTS + SALTS_ERROR ? 'stop' : salts > SALTS - SALTS_ERROR ? 'wait' : 'go';
      steel.push({ check: 'soluble salts', decision, found: salts, limit: SALTS });
    }
  }
  const decide = (rows: readonly Row[]): Decision => gravest(rows.map(({ decision }) => decision));
  return {
    decision: decide([...weather, ...steel]),
    weather: decide(weather),
    steel: decide(steel),
    dewPoint: dew + 273.15,
    highestDewPoint: highest + 273.15,
    margin: atGate.steel - error - 273.15 - highest,
    steelNeeded: highest + 273.15 + MARGIN + error,
    humidityAtSteel: atSteelOf(settlingPointOf(atGate.air - 273.15, atGate.humidity), atGate.steel - 273.15),
    isFrost: highest < 0,
    holdTime:
      known && checked
        ? { known: true, time: hold }
        : { known: false, ...(schedule === undefined ? {} : { atLeast: hold }) },
    ...(earliestStart === undefined || schedule === undefined || !known ? {} : { earliestStart }),
    requiredGrade,
    requiredProfile,
    surfaceFrom: qualified !== undefined ? 'qualification' : job.repair.class === 1 && throughWall ? 'leak' : 'class',
    reasons: [...weather, ...steel],
  };
}

interface Row {
  readonly check: string;
  readonly decision: Decision;
  readonly found?: number;
  readonly limit?: number;
}
