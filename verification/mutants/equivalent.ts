import { alike, type Equivalent, KNOWN, neither, TIE } from './alike.js';
import { equivalentInAcceptance } from './equivalent-in-acceptance.js';
import { equivalentInRecord } from './equivalent-in-as-built.js';
import { equivalentInCase } from './equivalent-in-case.js';
import { equivalentInCure } from './equivalent-in-cure.js';
import { equivalentInFound } from './equivalent-in-found.js';
import { equivalentInJob } from './equivalent-in-job.js';
import { equivalentInLaminate } from './equivalent-in-laminate.js';
import { equivalentInLaminateRoom } from './equivalent-in-laminate-room.js';
import { equivalentInPipe } from './equivalent-in-pipe.js';
import { equivalentInPlan } from './equivalent-in-plan.js';
import { equivalentInRooms } from './equivalent-in-rooms.js';
import { equivalentInSite } from './equivalent-in-site.js';
import { equivalentInWrap } from './equivalent-in-wrap.js';
import type { Mutant } from './instrument.js';

/** Changes that no admissible case can tell from the original, each with its reason. */

export const equivalents: readonly Equivalent[] = [
  ...alike('src/repair/limits/class.ts', 'what has no highest is covered by every class, and ends as such', [
    ['highest === null', 'false'],
  ]),
  ...alike('src/repair/site/climate.ts', 'a formula throws nothing but the refusal of a calculation', [
    ['!isCalculationError(error)', 'false'],
  ]),
  ...neither(
    'src/repair/site/reason.ts',
    'number, limit and kind of a check are given together or not at all',
    'number === undefined',
    'kind === undefined',
  ).filter(({ original, replacement }) => !(replacement === 'false' && original.includes('||'))),
  ...alike('src/repair/site/surface.ts', 'what is seen on the day is left out of what is said of the record', [
    ['true', 'false'],
    ['false', 'true'],
  ]),
  ...alike('src/repair/wrap/sheet.ts', `${KNOWN}: without that strength no extent is made, and nothing is laid`, [
    ['lapShearStrength === undefined', 'false'],
  ]),
  ...alike('src/repair/wrap/sheet.ts', TIE, [['ofBond > asked', 'ofBond >= asked']]),
  ...alike('src/repair/limits/contents.ts', 'both sides of the comparison are written alike', [
    ['contents.trim().toLowerCase()', 'contents.trim().toUpperCase()'],
  ]),
  ...alike('src/repair/limits/transition.ts', 'a field that is not stated is asked for before signing, and once', [
    ['transitionCuredAt === undefined', 'false'],
  ]),
  ...alike('src/repair/seal/by-hand.ts', `${TIE}; the area of the hole holds pi`, [
    ['reaction > largestJetByHand.value', 'reaction >= largestJetByHand.value'],
  ]),
  ...alike(
    'src/repair/seal/pad.ts',
    'no number is compared with one that is not there; it is asked for under the laminate',
    [['across !== undefined', 'true']],
  ),
  ...alike('src/repair/wrap/tape.ts', 'the word "none" has none of the members that are looked at', [
    ["fitting === 'none'", 'false'],
  ]),
  ...alike('src/repair/mix-and-cure/cure.ts', `${KNOWN}: a seal is planned exactly where one is asked for`, [
    ["seal === 'none' || asked === undefined", "seal === 'none' && asked === undefined"],
    ["seal === 'none'", 'false'],
    ['asked === undefined', 'false'],
  ]),
  ...alike('src/repair/mix-and-cure/mix.ts', `${KNOWN}: the filler has a cure exactly where one is asked for`, [
    ["asked === 'none' || cures.filler === 'none'", "asked === 'none' && cures.filler === 'none'"],
    ["asked === 'none'", 'false'],
    ["cures.filler === 'none'", 'false'],
  ]),
  ...alike('src/repair/timeline/cure-law.ts', 'a step waits for a material only where one is laid', [
    ["cure === 'none'", 'false'],
  ]),
  ...alike('src/repair/timeline/plan-timeline.ts', 'a step waits for a material only where one is laid', [
    ["cure === 'none'", 'false'],
  ]),
  ...alike(
    'src/repair/timeline/plan-timeline.ts',
    'a law that holds at every hour names no temperature: none of the steel lies outside it',
    [["law.sort !== 'over the history'", 'false']],
  ),
  ...alike('src/repair/timeline/timeline.ts', `${KNOWN}: every job has these steps, and it is thrown either way`, [
    ['step === undefined', 'false'],
  ]),
  ...alike(
    'src/repair/timeline/job-steps.ts',
    'putty cures exactly where a seal is planned, filler where some is placed',
    [
      ["seal !== 'none' && cures.putty !== 'none'", "seal !== 'none' || cures.putty !== 'none'"],
      ["seal !== 'none'", 'true'],
      ["cures.putty !== 'none'", 'true'],
      ["cures.filler !== 'none' && placing !== 'none'", "cures.filler !== 'none' || placing !== 'none'"],
      ["cures.filler !== 'none'", 'true'],
      ["placing !== 'none'", 'true'],
    ],
  ),
  ...neither(
    'src/repair/timeline/plan-timeline.ts',
    `${KNOWN}: what is filled is mixed`,
    "filler === 'none'",
    "mix === 'none'",
  ).filter(({ original, replacement }) => !(replacement === 'false' && original.includes('||'))),
  ...alike('src/repair/seal/seal.ts', `${TIE}; the area of the pad holds pi`, [
    ['forceOnPad <= practice.largestJetByHand.value', 'forceOnPad < practice.largestJetByHand.value'],
  ]),
  ...equivalentInRecord,
  ...alike('src/repair/end-of-life.ts', 'the calculation throws nothing but its own refusal', [
    ['!isCalculationError(error)', 'false'],
  ]),
  ...equivalentInCase,
  ...equivalentInFound,
  ...equivalentInJob,
  ...equivalentInLaminate,
  ...equivalentInLaminateRoom,
  ...equivalentInPipe,
  ...equivalentInPlan,
  ...equivalentInRooms,
  ...equivalentInSite,
  ...equivalentInWrap,
  ...equivalentInAcceptance,
  ...equivalentInCure,
];

const spaced = (text: string): string => text.replaceAll(/\s+/gu, ' ').trim();

export const isTheSame = (row: Equivalent, mutant: Mutant): boolean =>
  row.file === mutant.file &&
  spaced(row.original) === spaced(mutant.original) &&
  spaced(row.replacement) === spaced(mutant.replacement);

export const reasonOf = (mutant: Mutant): string | undefined =>
  equivalents.find((row) => isTheSame(row, mutant))?.because;
