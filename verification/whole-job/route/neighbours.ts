import type { Loss, Span } from './loss.js';
import type { Readings } from './open-readings.js';
import type { Job } from './read-job.js';

const between = (a: Span, b: Span): number => Math.max(0, a.from - b.to, b.from - a.to);
const around = (a: Span, b: Span): Span => ({ from: Math.min(a.from, b.from), to: Math.max(a.to, b.to) });

function together(a: Loss, b: Loss): Loss {
  return {
    along: around(a.along, b.along),
    round: around(a.round, b.round),
    remainingWall: Math.min(a.remainingWall, b.remainingWall),
    causes: [...a.causes, ...b.causes],
  };
}

/** Whether two act as one by the end of the life, when each edge of either has grown (DNV-RP-F101, as recalled: pipe-and-defect.md). */
function actAsOne(job: Job, diameter: number, a: Loss, b: Loss): boolean {
  const root = Math.sqrt(diameter * job.pipe.wallThickness);
  const grown = 2 * (job.defect.growth?.length ?? 0) * job.repair.life;
  const within = (gap: number, most: number): boolean => gap - grown <= most * (1 + 1e-12);
  return within(between(a.along, b.along), 2 * root) && within(between(a.round, b.round), Math.PI * root);
}

/** The neighbours as they are stated, all on one side; a gap that was measured the long way round counts the short way. */
function stated({ defect }: Job, diameter: number): readonly Loss[] {
  const { neighbours } = defect;
  return (neighbours === undefined || neighbours === 'none' ? [] : neighbours).map((each) => {
    const { gapAlong, axialLength, circumferentialWidth: width, remainingWall, cause } = each;
    const other = Math.PI * diameter - each.gapRound - defect.circumferentialWidth - width;
    const gapRound = Math.max(0, Math.min(each.gapRound, other));
    return {
      along: { from: gapAlong, to: gapAlong + axialLength },
      round: { from: gapRound, to: gapRound + width },
      remainingWall,
      causes: [cause],
    };
  });
}

/** Chains of losses that act as one with each other. */
function colonies(job: Job, diameter: number): readonly Loss[] {
  const found: Loss[] = [...stated(job, diameter)];
  for (let first = 0; first < found.length; first++) {
    for (let other = first + 1; other < found.length; other++) {
      const [a, b] = [found[first] as Loss, found[other] as Loss];
      if (!actAsOne(job, diameter, a, b)) continue;
      found.splice(other, 1);
      found[first] = together(a, b);
      first = -1;
      break;
    }
  }
  return found;
}

const INSIDE = new Set(['internal corrosion', 'internal erosion']);

/** The job with one defect that holds all that act with it, and the losses that lie apart from it. */
export function joined(job: Job, readings: Readings): Job {
  const { defect } = job;
  const diameter = job.pipe.outsideDiameter ?? (job.pipe.circumference as number) / Math.PI;
  const itself: Loss = {
    along: { from: -defect.axialLength, to: 0 },
    round: { from: -defect.circumferentialWidth, to: 0 },
    remainingWall: defect.remainingWall,
    causes: [defect.cause],
  };
  const all = colonies(job, diameter);
  const acting = all.filter((each) => actAsOne(job, diameter, itself, each));
  const apart = all.filter((each) => !acting.includes(each));
  if (acting.length === 0) return { ...job, apart };
  // Nobody says on which side each loss lies: the two that reach furthest count on either side.
  const members = stated(job, diameter).filter((each) =>
    acting.some(({ along, round }) => between(along, each.along) + between(round, each.round) === 0),
  );
  const reach = (of: 'along' | 'round'): number => {
    const furthest = members.map((each) => each[of].to).sort((a, b) => b - a);
    return (furthest[0] ?? 0) + (furthest[1] ?? 0);
  };
  const causes = new Set([...itself.causes, ...acting.flatMap((each) => each.causes)]);
  const bothInside = readings.insideCauses === 'note' && [...causes].every((cause) => INSIDE.has(cause));
  const { profile: _, ...whole } = defect;
  return {
    ...job,
    apart,
    reach: Math.max(...members.map((each) => each.along.to)),
    defect: {
      ...whole,
      // Unknown counts as from inside where the wall goes on, and as from outside where a hollow is filled.
      cause: causes.size === 1 || bothInside ? defect.cause : 'unknown',
      axialLength: defect.axialLength + reach('along'),
      circumferentialWidth: Math.min(defect.circumferentialWidth + reach('round'), Math.PI * diameter),
      remainingWall: Math.min(defect.remainingWall, ...acting.map((each) => each.remainingWall)),
    },
  };
}
