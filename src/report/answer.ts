import type { ThickOverThin } from '../laminate/index.js';
import { type Amount, roundedDown } from '../quantity/index.js';
import type { RepairCase, Slot } from '../repair/case/case.js';
import type {
  AsFound,
  ExtentDesign,
  Footprint,
  JointDesign,
  LaminateDesign,
  Reason,
  RepairDesign,
  StrengthOutcome,
} from '../repair/design/design.js';
import type { CureDesign, MixDesign } from '../repair/design/design-work.js';
import { sidesOfBend } from '../repair/design/side-of-bend.js';
import { type StepId, stepAt, type TimelineStep } from '../repair/timeline/timeline.js';

import { comparisons } from './comparison.js';
import type { Block } from './document.js';
import { amountOnSheet, lineOnSheet } from './line-text.js';
import type { ChosenOptions } from './options.js';
import { type Show, showSafely } from './safe-side.js';
import { sealBlocks } from './seal.js';
import { shownValue } from './shown-value.js';
import { siteWorkBlocks } from './site-work.js';

/** What, how much, and by which criterion. */
type Row = readonly [label: string, value: string, by?: string];

const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** A number with its name, as reasons and assumptions carry it. */
export function amountText(amount: Amount, options: ChosenOptions): string {
  return `${amount.name} ${amountOnSheet(amount, options, false)}`;
}

/** What counts as a hole: the one that is there, or the wall that will be gone. */
function wallState({ throughWall }: AsFound, { defect }: RepairCase): string {
  if (defect.kind === 'through-wall hole') return 'round the hole; the pipe leaks now';
  if (defect.kind === 'through-wall slot') return 'round the slot; the pipe leaks now';
  return throughWall ? 'used up: counts as through-wall' : 'not through-wall';
}

/** The methods of API 579-1 scale the pressure of the sound pipe, whose margin stays in it; the others divide by a factor. */
function strengthBasis({ method, safetyFactor }: StrengthOutcome, show: Show): string {
  if (method.startsWith('API 579')) return `by ${method}, by RSF against the pressure of the sound pipe`;
  return `by ${method}, safety factor ${show('number', 'safetyFactor', safetyFactor)}`;
}

/** The line while people work on it, and how much it may carry then. */
function lineRows({ line }: RepairDesign, show: Show, options: ChosenOptions): Row[] {
  if (line === undefined) return [];
  const { state, pressure, highestPressure, limitedBy } = line;
  if (highestPressure === undefined)
    return pressure === 0
      ? [['Line during the work', state]]
      : [
          [
            'Line during the work',
            show('gauge pressure', 'pressure', pressure),
            `${state}; how much it may carry is not known: its leak seal is not worked out`,
          ],
        ];
  const limit = roundedDown('highest pressure', 'gauge pressure', highestPressure);
  const most =
    limitedBy === 'pressure that the leak seal is tightened for'
      ? 'no more than this, since the leak seal is tightened for it'
      : `at most ${amountOnSheet(limit, options, true)}, by the ${limitedBy}`;
  return [['Line during the work', show('gauge pressure', 'pressure', pressure), `${state}; ${most}`]];
}

function foundRows(found: AsFound, repairCase: RepairCase, show: Show): Row[] {
  const { hoopStressThinned, holeAtEndOfLife, designHole, strength } = found;
  const rows: Row[] = [['Hoop stress, sound wall', show('stress', 'hoopStressSound', found.hoopStressSound)]];
  if (hoopStressThinned !== undefined)
    rows.push(['Hoop stress, thinned wall', show('stress', 'hoopStressThinned', hoopStressThinned)]);
  const { outsidePressure, soilPressure } = found;
  if (outsidePressure !== undefined) {
    const ofSoil =
      soilPressure === undefined || soilPressure === 0
        ? ''
        : `; of soil and traffic ${show('gauge pressure', 'soilPressure', soilPressure)}`;
    rows.push([
      'Pressure from outside',
      show('gauge pressure', 'outsidePressure', outsidePressure),
      `on the empty pipe${ofSoil}`,
    ]);
  }
  rows.push([
    'Wall at the end of life',
    show('length', 'wallAtEndOfLife', found.wallAtEndOfLife),
    wallState(found, repairCase),
  ]);
  const { slotAtEndOfLife, designSlot } = found;
  if (slotAtEndOfLife !== undefined && designSlot !== undefined) {
    const taken = (slot: Slot): string =>
      `${show('length', 'axialLength', slot.axialLength)} along, ${show('length', 'circumferentialWidth', slot.circumferentialWidth)} round the pipe`;
    rows.push(['Slot at the end of life', taken(slotAtEndOfLife), `designed for ${taken(designSlot)}`]);
  } else if (holeAtEndOfLife !== undefined) {
    const taken = designHole === undefined ? '' : `designed for ${show('length', 'designHole', designHole)}`;
    rows.push(['Hole at the end of life', show('length', 'holeAtEndOfLife', holeAtEndOfLife), taken]);
  }
  if (strength !== undefined) {
    const carries = strength.fitAsItIs ? 'carries the design pressure' : 'does not carry the design pressure';
    rows.push([
      'Safe pressure, thinned',
      show('gauge pressure', 'safePressure', strength.safePressure),
      `${strengthBasis(strength, show)}; ${carries}`,
    ]);
  }
  return rows;
}

function laminateRows(laminate: LaminateDesign, ply: string, show: Show): Row[] {
  const { thickness, plies, laidThickness, wrappedDiameter, resistance, hoopStrain, axialStrain } = laminate;
  const { footprint, joints, fittingFactor, thickOverThin } = laminate;
  return [
    [
      'Laminate thickness',
      show('length', 'thickness', thickness.value),
      `governed by ${thickness.governing}${fittingFactor === undefined ? '' : `, with the factor ${show('number', 'fittingFactor', fittingFactor)} of the fitting`}`,
    ],
    ['Plies', counted(plies, 'ply', 'plies'), `${show('length', 'laidThickness', laidThickness)} laid, ${ply} each`],
    ...(footprint === undefined ? [] : [footprintRow(footprint, show)]),
    ['Laid on diameter', show('length', 'wrappedDiameter', wrappedDiameter)],
    ['Resists', show('gauge pressure', 'resistance', resistance.value), `governed by ${resistance.governing}`],
    ['Allowable hoop strain', show('strain', 'hoopStrain', hoopStrain)],
    ['Allowable axial strain', show('strain', 'axialStrain', axialStrain)],
    ...(joints === undefined ? [] : [jointRow(joints, show)]),
    ...(thickOverThin === undefined ? [] : [secondOpinionRow(thickOverThin, show)]),
  ];
}

/** How far the thin walls of the shared load are from thick ones; no line of the design rests on it. */
function secondOpinionRow({ pipe, laminate }: ThickOverThin, show: Show): Row {
  return [
    'Thick walls against thin',
    `${show('ratio', 'pipeOverThin', pipe)} in the pipe`,
    `${show('ratio', 'laminateOverThin', laminate)} in the laminate: the stress of thick, closed walls over that of thin ones that share the pressure by their hoop stiffness; a second opinion, on which nothing rests`,
  ];
}

/** Plies that go through where bands of sheet follow each other. */
function jointRow({ carryingPlies, lostPlies, reach }: JointDesign, show: Show): Row {
  return [
    'Plies that carry along the pipe',
    String(carryingPlies),
    `${counted(lostPlies, 'layer')} at most with a joint within ${show('length', 'jointReach', reach)} of one place`,
  ];
}

/** Where the laminate over a leak is bonded to nothing, and why that is so. */
function footprintRow({ under, diameter, length, bonded }: Footprint, show: Show): Row {
  if (under === 'hole') return ['Bonded to nothing over', show('length', 'unbonded', diameter), 'the hole'];
  if (under === 'slot')
    return ['Bonded to nothing over', show('length', 'unbonded', diameter), 'the circle round the slot'];
  return [
    'Bonded to nothing over',
    show('length', 'unbonded', diameter),
    bonded === 'beside it'
      ? 'the hole with pad, sheet and collar; the bands come off before the wrap'
      : `a ring ${show('length', 'unbondedLength', length)} long, since what lies on the leak reaches round the pipe`,
  ];
}

function extentRows(extent: ExtentDesign, show: Show): Row[] {
  const { meanThickness, overlap, taper, defectLength, totalLength, insideLength } = extent;
  const { inside, outside } = sidesOfBend(extent);
  const asLaid = `of the ${show('length', 'meanThickness', meanThickness)} that lie there on average`;
  return [
    [
      'Axial length',
      show('length', 'totalLength', totalLength),
      `${insideLength === undefined ? '' : `${outside.trim()}, ${show('length', 'insideLength', insideLength)} along its inside; `}${show('length', 'defectLength', defectLength)} of defect at the end of life between the overlaps`,
    ],
    [
      'Overlap, each end',
      show('length', 'overlap', overlap.value),
      `${inside === '' ? '' : `${inside.trim()}, `}governed by ${overlap.governing}`,
    ],
    ['Taper, each end', show('length', 'taper', taper), [inside.trim(), asLaid].filter(Boolean).join(', ')],
  ];
}

const PREPARE = 'prepare at least this length of surface';

function wrapRows(wrap: NonNullable<RepairDesign['wrap']>, extent: ExtentDesign | undefined, show: Show): Row[] {
  const rolls: Row = [
    'Rolls',
    counted(wrap.rolls, 'roll'),
    `${show('length', 'rollLength', wrap.leftOnLastRoll)} left on the last`,
  ];
  if (wrap.form === 'sheet')
    return [
      [
        'Sheet',
        `${counted(wrap.layers, 'layer')} in ${counted(wrap.bands, 'band')}`,
        `${show('length', 'sheetLength', wrap.sheetLength)} of sheet`,
      ],
      ...(extent === undefined
        ? []
        : [['Wrap over', show('length', 'totalLength', extent.totalLength), PREPARE] as const]),
      rolls,
    ];
  const outside = extent === undefined ? '' : sidesOfBend(extent).outside;
  return [
    [
      'Wraps',
      counted(wrap.passes, 'pass', 'passes'),
      `${counted(wrap.layersPerPass, 'layer')} each; at least ${wrap.layers} everywhere over ${show('length', 'fullCountLength', wrap.fullCountLength)}`,
    ],
    [
      'Wrap over',
      show('length', 'overallLength', wrap.overallLength),
      `with the end bands of the tape; ${PREPARE}${outside}`,
    ],
    ...(wrap.insideOverlap === undefined
      ? []
      : [
          [
            'Overlap on the bend',
            show('ratio', 'insideOverlap', wrap.insideOverlap),
            'along the inside, where the stated one is kept along the outside',
          ] as const,
        ]),
    ['Tape', show('length', 'tapeLength', wrap.tapeLength)],
    rolls,
  ];
}

const LIMITED = { job: 'one batch does it', kit: 'limited by the kit', 'working time': 'limited by the working time' };

function mixRows(label: string, mix: MixDesign | 'none' | undefined, show: Show): Row[] {
  if (mix === undefined || mix === 'none') return [];
  const amount = [
    mix.volume === undefined ? undefined : show('volume', 'volume', mix.volume),
    mix.area === undefined ? undefined : `over ${show('area', 'fabric', mix.area)}`,
  ].filter((part) => part !== undefined);
  return [
    [`${label} to mix`, show('mass', 'mass', mix.mass), [mix.material, ...amount].join(', ')],
    [
      'Batches',
      counted(mix.batches, 'batch', 'batches'),
      `${show('mass', 'base', mix.base)} base + ${show('mass', 'hardener', mix.hardener)} hardener each; ${LIMITED[mix.limitedBy]}; ${counted(mix.kits, 'kit')}`,
    ],
  ];
}

/** Working time of a material, and its wait as the timeline has it. */
function cureRows(cure: CureDesign | 'none' | undefined, wait: TimelineStep | undefined, show: Show): Row[] {
  if (cure === undefined || cure === 'none') return [];
  const rows: Row[] = [['Work within', show('time', 'workingTime', cure.workingTime), cure.material]];
  if (wait?.duration.known === true) {
    rows.push([
      'Wait for cure',
      show('time', 'wait', wait.duration.time),
      `${cure.material}: at least; go on only when the hold point passes`,
    ]);
  }
  return rows;
}

export function reasonItem({ found, limit, clause, ...said }: Reason, options: ChosenOptions): string {
  const numbers = [
    found === undefined ? undefined : `found ${amountText(found, options)}`,
    limit === undefined ? undefined : `limit ${amountText(limit, options)}`,
  ].filter((part) => part !== undefined);
  const detail = numbers.length === 0 ? '' : ` (${numbers.join('; ')})`;
  return `${lineOnSheet(said, options)}${detail}${clause === undefined ? '' : ` [${clause}]`}`;
}

/** The answer: the verdict, why not where there is a no, and each quantity with the criterion that governs it. */
export function answerBlocks(design: RepairDesign, options: ChosenOptions): Block[] {
  const { verdict, reasons, missing, found, laminate, extent, wrap, mixes, cures, timeline } = design;
  const waitAt = (id: StepId) => (timeline === undefined ? undefined : stepAt(timeline, id));
  const show = showSafely(options);
  const rows: Row[] = [
    ...(laminate === undefined
      ? []
      : laminateRows(
          laminate,
          shownValue('length', 'plyThickness', design.case.laminate.plyThickness, options, false),
          show,
        )),
    ...(extent === undefined ? [] : extentRows(extent, show)),
    ...(wrap === undefined ? [] : wrapRows(wrap, extent, show)),
    ...mixRows('Filler', mixes?.filler, show),
    ...mixRows('Resin', mixes?.laminateResin, show),
    ...cureRows(cures?.filler, waitAt('filler-wait'), show),
    ...cureRows(cures?.laminate, waitAt('cure'), show),
    ...cureRows(cures?.putty, waitAt('putty'), show),
    ...lineRows(design, show, options),
    ...(found === undefined ? [] : foundRows(found, design.case, show)),
  ];
  const blocks: Block[] = [
    { sort: 'heading', level: 1, text: 'ANSWER' },
    { sort: 'paragraph', text: `Verdict: ${verdict.toUpperCase()}` },
  ];
  if (reasons.length > 0) blocks.push({ sort: 'list', items: reasons.map((reason) => reasonItem(reason, options)) });
  if (missing.length > 0) {
    blocks.push(
      { sort: 'paragraph', text: 'Missing:' },
      { sort: 'list', items: missing.map(({ field, why, askWhom }) => `${field}: ${why}; ask ${askWhom}`) },
    );
  }
  if (rows.length > 0) {
    if (verdict !== 'designed')
      blocks.push({ sort: 'paragraph', text: 'What was computed before the design stopped:' });
    blocks.push({ sort: 'rows', rows: rows.map(([label, value, by]) => [label, value, by ?? '']) });
  }
  blocks.push(...comparisons(design, options), ...sealBlocks(design, options), ...siteWorkBlocks(design, options));
  return blocks;
}
