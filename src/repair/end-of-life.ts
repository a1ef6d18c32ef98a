import { isCalculationError } from '../formula/index.js';
import { multiples } from '../numeric/index.js';
import { inspectionInterval, remainingLife, wallAtEndOfLife } from '../pipe/index.js';
import { dayAfter } from '../quantity/clock.js';
import { type CorrosionRate, exactly, type Length, type Line, line, roundedUp, type Time } from '../quantity/index.js';
import { practice } from '../rules/index.js';
import type { Designed } from './design/design.js';
import { type GrowthRates, growthOf } from './found/growth.js';
import { openWorkbook } from './job/open-workbook.js';

/** One re-inspection: when, and the least wall that the design counts on by then. */
export interface ReInspection {
  /** From the survey, which is never later than the repair. */
  readonly after: Time;
  /** Where the case names the day of its survey. */
  readonly day?: string;
  /** Absent where the design counts on no wall: it is through, or was taken to be by the end. */
  readonly leastWall?: Length;
}

/** What the life of a repair comes to, and what is looked at until then. */
export interface EndOfLife {
  /** After this the laminate is rated for nothing. */
  readonly life: Time;
  /** The last day of that life, where the case names the day of its survey. */
  readonly lastDay?: string;
  /** Until the wall is down to what still counts as a wall, at the rate of the case; or why there is no such time. */
  readonly wallLasts:
    | {
        /** Whether there is such a time. */
        readonly known: true;
        /** From the survey on. */
        readonly time: Time;
        /** The least that still counts as a wall. */
        readonly until: Length;
      }
    | {
        /** Whether there is such a time. */
        readonly known: false;
        /** Why there is none. */
        readonly because: string;
      };
  /** The longest time to the next inspection: the interval of the owner, or half of the life where that is shorter or none is stated. */
  readonly inspectWithin: Time;
  /** What sets that time. */
  readonly inspectBy: 'interval of the owner' | 'half of the remaining life';
  /** Each one within the life of the repair, in order; a long list is cut short. */
  readonly inspections: readonly ReInspection[];
  /** What is measured each time. */
  readonly measure: readonly Line[];
  /** When it comes off, whatever the day. */
  readonly comesOff: readonly Line[];
}

/**
 * The end of the life of a repair that was designed: no interval is invented. Half of the remaining life is the rule of API
 * 570, and what the owner states counts where it is shorter.
 *
 * @param design a design that was made
 */
export function endOfLife(design: Designed): EndOfLife {
  const { found, case: repairCase, options } = design;
  const { life, inspectionInterval: ofOwner } = repairCase.repair;
  const work = openWorkbook(repairCase, { rules: options.rules });
  // Nothing is designed before the growth is known.
  const { depth: rate } = growthOf(work, found.wallToday) as GrowthRates;
  const until = work.rules.throughWallBelow.value;
  const wallLasts = lastsFor(found.throughWall, rate, found.wallToday, until);
  const left = wallLasts.known ? (Math.min(life, wallLasts.time) as Time) : life;
  const within = inspectionInterval({ remainingLife: left, classLimit: ofOwner ?? life });
  const { date: survey } = repairCase;
  const most = practice.mostListed.value;
  const result: { -readonly [K in keyof EndOfLife]: EndOfLife[K] } = {
    life,
    wallLasts,
    inspectWithin: within,
    inspectBy: within === ofOwner ? 'interval of the owner' : 'half of the remaining life',
    inspections: multiples(within, life, most).map((after) => inspectionAt(after as Time)),
    measure: measured(design),
    comesOff: reasonsToComeOff(life),
  };
  if (survey !== undefined) result.lastDay = dayAfter(survey, life);
  return result;

  function inspectionAt(after: Time): ReInspection {
    const at: { -readonly [K in keyof ReInspection]: ReInspection[K] } = { after };
    if (survey !== undefined) at.day = dayAfter(survey, after);
    if (!found.throughWall) at.leastWall = wallAtEndOfLife({ presentWall: found.wallToday, rate, life: after });
    return at;
  }
}

function lastsFor(throughWall: boolean, rate: CorrosionRate, wallToday: Length, until: Length): EndOfLife['wallLasts'] {
  if (throughWall) return { known: false, because: 'the design counts on no wall at the defect' };
  if (rate === 0) return { known: false, because: 'the case states no further loss' };
  try {
    const time = remainingLife({ presentWall: wallToday, requiredWall: until, rate });
    return { known: true, time, until };
  } catch (error) {
    if (!isCalculationError(error)) throw error;
    return { known: false, because: 'the loss is so slow that no number holds the time' };
  }
}

function measured({ found, laminate, case: { defect, service } }: Designed): Line[] {
  const lines = [
    line('Edges and surface of the wrap: lifting, cracks, wear, discolouration, softness; tap test all over.'),
    line(
      'Wall beside the wrap on both sides, and through the steel where a probe reaches it from the other side: the rate since the last reading.',
    ),
    line(
      'Highest pressure and temperature since the last inspection: at most {0} and {1}.',
      exactly('design pressure', 'gauge pressure', service.designPressure),
      exactly('design temperature', 'temperature', service.designTemperature),
    ),
  ];
  if (found.throughWall)
    lines.push(line('Weeping or a damp edge: the bond round the hole is all that holds the contents.'));
  if (defect.growth !== 'none')
    lines.push(
      line(
        'Length of the loss, as far as it can be found: the overlap was laid for {0}.',
        exactly('length at the end of life', 'length', found.lengthAtEndOfLife),
      ),
    );
  if (laminate.footprint?.under === 'seal')
    lines.push(line('Rust or swelling over the seal: what lies under it cannot be seen.'));
  return lines;
}

function reasonsToComeOff(life: Time): Line[] {
  return [
    line(
      'After {0}, the life that it was designed for, unless it is designed anew before.',
      roundedUp('life', 'time', life),
    ),
    line('At any leak, at an edge that lifts, at a crack through plies, where it has grown soft.'),
    line(
      'Where a reading is below the least wall of its inspection, or the loss longer than was laid for: design anew, and take it off unless that holds.',
    ),
    line(
      'Where the line has been above its design pressure or its design temperature: design anew for what it carried.',
    ),
  ];
}
