import type { Kind } from '../quantity/index.js';
import type {
  Amount,
  AsFound,
  CureDesign,
  ExtentDesign,
  Governed,
  LaminateDesign,
  MixDesign,
  Reason,
  RepairDesign,
} from '../repair/design.js';
import type { Block } from './document.js';
import type { ChosenOptions } from './options.js';
import { shownValue } from './step.js';
import { preferredUnit, unitText } from './units.js';

/** What, how much, and by which criterion. */
type Row = readonly [label: string, value: string, by?: string];

const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** A number with its name, as reasons and assumptions carry it. */
export function amountText({ name, kind, value }: Amount, options: ChosenOptions): string {
  return `${name} ${shownValue(kind, name, value, options, false)}`;
}

function foundRows(found: AsFound, show: Show): Row[] {
  const { safePressure, safePressureMethod, safetyFactor, hoopStressThinned, holeAtEndOfLife, fitAsItIs } = found;
  const factor = safetyFactor === undefined ? '' : `, safety factor ${show('number', '', safetyFactor)}`;
  const carries =
    fitAsItIs === undefined ? '' : fitAsItIs ? '; carries the design pressure' : '; does not carry the design pressure';
  return [
    ['Hoop stress, sound wall', show('stress', 'hoopStressSound', found.hoopStressSound)],
    ...(hoopStressThinned === undefined
      ? []
      : [['Hoop stress, thinned wall', show('stress', 'hoopStressThinned', hoopStressThinned)] as Row]),
    [
      'Wall at the end of life',
      show('length', 'wallAtEndOfLife', found.wallAtEndOfLife),
      found.throughWall ? 'counts as through-wall' : 'not through-wall',
    ],
    ...(holeAtEndOfLife === undefined
      ? []
      : [['Hole at the end of life', show('length', 'hole', holeAtEndOfLife)] as Row]),
    ...(safePressure === undefined
      ? []
      : [
          [
            'Safe pressure, thinned',
            show('gauge pressure', 'safePressure', safePressure),
            `by ${safePressureMethod ?? 'the method named'}${factor}${carries}`,
          ] as Row,
        ]),
  ];
}

function laminateRows(laminate: LaminateDesign, ply: number, show: Show): Row[] {
  const { thickness, plies, laidThickness, resistance } = laminate;
  return [
    ['Laminate thickness', show('length', 'thickness', thickness.value), `governed by ${thickness.governing}`],
    [
      'Plies',
      counted(plies, 'ply', 'plies'),
      `${show('length', 'laidThickness', laidThickness)} laid, ${show('length', 'plyThickness', ply)} each`,
    ],
    ...(resistance === undefined
      ? []
      : [['Resists', show('gauge pressure', 'resistance', resistance), 'by the criterion that governs'] as Row]),
  ];
}

function extentRows({ overlap, taper, totalLength }: ExtentDesign, show: Show): Row[] {
  return [
    ['Axial length', show('length', 'totalLength', totalLength), 'centred on the defect'],
    ['Overlap, each end', show('length', 'overlap', overlap.value), `governed by ${overlap.governing}`],
    ['Taper, each end', show('length', 'taper', taper)],
  ];
}

function wrapRows(wrap: NonNullable<RepairDesign['wrap']>, show: Show): Row[] {
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
      rolls,
    ];
  return [
    [
      'Wraps',
      `${counted(wrap.passes, 'pass', 'passes')}, ${counted(wrap.layersPerPass, 'layer')} each`,
      `at least ${counted(wrap.layers, 'layer')} everywhere over ${show('length', 'overallLength', wrap.overallLength)}`,
    ],
    ['Tape', show('length', 'tapeLength', wrap.tapeLength)],
    rolls,
  ];
}

const LIMITED = { job: 'one batch does it', kit: 'limited by the kit', 'working time': 'limited by the working time' };

function mixRows(mix: MixDesign, show: Show): Row[] {
  const amount = [
    mix.volume === undefined ? undefined : show('volume', 'volume', mix.volume),
    mix.area === undefined ? undefined : `over ${show('area', 'area', mix.area)}`,
  ].filter((part) => part !== undefined);
  const label = mix.use === 'filler' ? 'Filler' : 'Resin';
  return [
    [`${label} to mix`, show('mass', 'mass', mix.mass), [mix.material, ...amount].join(', ')],
    [
      'in',
      counted(mix.batches, 'batch', 'batches'),
      `${show('mass', 'base', mix.base)} base + ${show('mass', 'hardener', mix.hardener)} hardener each; ${LIMITED[mix.limitedBy]}; ${counted(mix.kits, 'kit')}`,
    ],
  ];
}

function cureRows(cure: CureDesign, show: Show): Row[] {
  return [
    ['Work within', show('time', 'workingTime', cure.workingTime), cure.material],
    ['Wait for cure', show('time', 'wait', cure.wait), 'and the hold point, not the clock, releases it'],
  ];
}

type Show = (kind: Kind | 'number' | 'count', name: string, value: number) => string;

/** Every candidate for a quantity, the governing one marked: what the engineer compares first. */
function candidateTable(title: string, governed: Governed, name: string, options: ChosenOptions): Block {
  const unit = preferredUnit('length', name, options.units);
  return {
    sort: 'table',
    head: [`${title} [${unitText(unit)}]`, 'criterion'],
    rows: governed.candidates.map(({ criterion, value }) => [
      shownValue('length', name, value, options, true).split(' ')[0] ?? '',
      criterion === governed.governing ? `${criterion}  <- governs` : criterion,
    ]),
  };
}

function alternativeTable({ alternatives }: LaminateDesign, options: ChosenOptions): Block[] {
  if (alternatives.length === 0) return [];
  const unit = unitText(preferredUnit('length', 'thickness', options.units));
  return [
    { sort: 'paragraph', text: 'For comparison, by the methods that were not chosen:' },
    {
      sort: 'table',
      head: [`thickness [${unit}]`, 'method'],
      rows: alternatives.map((each) =>
        'value' in each
          ? [shownValue('length', 'thickness', each.value, options, true).split(' ')[0] ?? '', each.criterion]
          : ['-', `${each.criterion}: needs ${each.needs}`],
      ),
    },
  ];
}

function reasonItem({ text, found, limit, clause }: Reason, options: ChosenOptions): string {
  const numbers = [
    found === undefined ? undefined : `found ${amountText(found, options)}`,
    limit === undefined ? undefined : `limit ${amountText(limit, options)}`,
  ].filter((part) => part !== undefined);
  const detail = numbers.length === 0 ? '' : ` (${numbers.join('; ')})`;
  return `${text}${detail}${clause === undefined ? '' : ` [${clause}]`}`;
}

/** The answer: the verdict, why not where there is a no, and each quantity with the criterion that governs it. */
export function answerBlocks(design: RepairDesign, options: ChosenOptions): Block[] {
  const { verdict, reasons, missing, asFound, laminate, extent, wrap, mixes, cures } = design;
  const show: Show = (kind, name, value) => shownValue(kind, name, value, options, true);
  const rows: Row[] = [
    ...(laminate === undefined ? [] : laminateRows(laminate, design.case.laminate.plyThickness, show)),
    ...(extent === undefined ? [] : extentRows(extent, show)),
    ...(wrap === undefined ? [] : wrapRows(wrap, show)),
    ...mixes.flatMap((mix) => mixRows(mix, show)),
    ...cures.flatMap((cure) => cureRows(cure, show)),
    ...(asFound === undefined ? [] : foundRows(asFound, show)),
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
  if (laminate !== undefined) {
    blocks.push(
      candidateTable('thickness', laminate.thickness, 'thickness', options),
      ...alternativeTable(laminate, options),
    );
  }
  if (extent !== undefined) blocks.push(candidateTable('overlap', extent.overlap, 'overlap', options));
  return blocks;
}
