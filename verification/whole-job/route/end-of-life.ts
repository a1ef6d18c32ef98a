import { type Found, wallLossRate } from './pipe-as-found.js';
import type { Job } from './read-job.js';
import { ruleOf } from './rules.js';

const DAY = 86_400;

/** What the repair is good for and when it is looked at: half of what is left, as API 570 has it, or what the owner asks for. */
export function endOfLifeOf(job: Job, found: Found): Record<string, unknown> {
  const { life, inspectionInterval: ofOwner } = job.repair;
  const rate = wallLossRate(job);
  const noWall = ruleOf(job, 'throughWallBelow');
  const lasts = !found.throughWall && rate > 0 ? (found.wallToday - noWall) / rate : undefined;
  const half = Math.min(life, lasts ?? life) / 2;
  const within = Math.min(half, ofOwner ?? life);
  const count = Math.min(30, Math.floor(life / within + 1e-9));
  return {
    life,
    wallLasts: lasts === undefined ? { known: false } : { known: true, time: lasts, until: noWall },
    inspectWithin: within,
    inspectBy: within === ofOwner ? 'interval of the owner' : 'half of the remaining life',
    inspections: Array.from({ length: count }, (_, index) => {
      const after = Math.min((index + 1) * within, life);
      const wall = found.throughWall ? {} : { leastWall: Math.max(0, found.wallToday - rate * after) };
      return { after, ...dayOf(job, after), ...wall };
    }),
    ...(job.date === undefined ? {} : { lastDay: dayOf(job, life).day }),
  };
}

function dayOf({ date }: Job, after: number): { readonly day?: string } {
  if (date === undefined) return {};
  const days = Math.floor(after / DAY);
  return { day: new Date(Date.parse(date) + days * DAY * 1000).toISOString().slice(0, 10) };
}
