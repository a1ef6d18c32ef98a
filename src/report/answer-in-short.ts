import { isBeyondRepair } from '../repair/acceptance/pressure-test.js';
import type { RepairDesign } from '../repair/design/design.js';
import type { MixDesign } from '../repair/design/design-work.js';
import { sidesOfBend } from '../repair/design/side-of-bend.js';
import { leastOf } from '../repair/timeline/duration.js';
import { type StepId, stepAt } from '../repair/timeline/timeline.js';
import type { ChosenOptions } from './options.js';
import { type Show, showSafely } from './safe-side.js';
import { shownValue } from './shown-value.js';

/** One line of the answer: what, how much, by which criterion, and the formula whose step gives it. */
export type ShortRow = readonly [label: string, value: string, by: string, formula?: ShownBy];

/**
 * The step behind a line. The first of a formula, or its last: filler and resin are mixed by the same ones, in this order. The
 * first step that gives each of some results, or the part in which it stands. Or the whole part of a formula.
 */
export type ShownBy =
  | { readonly formula: string; readonly isLast?: true }
  | { readonly results: readonly number[]; readonly isPart?: true }
  | { readonly partOf: string };

/** The answer in a dozen lines: what is laid, how long, with what, how long it waits, what it bears. */
export function answerInShort(design: RepairDesign, options: ChosenOptions): ShortRow[] {
  const show = showSafely(options);
  return [
    ...laminateRows(design, show, options),
    ...wrapRows(design, show),
    ...mixRows('Filler', design.mixes?.filler, show, { formula: 'resin/batch-split' }),
    ...mixRows('Resin', design.mixes?.laminateResin, show, { formula: 'resin/batch-split', isLast: true }),
    ...sealRows(design, show),
    ...hourRows(design, show),
    ...siteRows(design),
    ...testRows(design, show),
  ];
}

function laminateRows(
  { laminate, extent, case: { service } }: RepairDesign,
  show: Show,
  options: ChosenOptions,
): ShortRow[] {
  if (laminate === undefined) return [];
  const { thickness, plies, laidThickness, resistance } = laminate;
  const rows: ShortRow[] = [
    [
      'Laminate',
      `${plies} plies`,
      `${show('length', 'laidThickness', laidThickness)} laid; ${show('length', 'thickness', thickness.value)} needed, by ${thickness.governing}`,
      { formula: 'laminate/ply-count' },
    ],
    [
      'It resists',
      show('gauge pressure', 'resistance', resistance.value),
      `design pressure ${shownValue('gauge pressure', 'designPressure', service.designPressure, options, false)}; by ${resistance.governing}`,
      { results: [resistance.value] },
    ],
  ];
  if (extent !== undefined) {
    const { meanThickness, totalLength, insideLength, overlap, taper } = extent;
    const onBend =
      insideLength === undefined
        ? ''
        : `along the outside, ${show('length', 'insideLength', insideLength)} along the inside; along the inside too, `;
    const asLaid = meanThickness > laidThickness ? ` of ${show('length', 'meanThickness', meanThickness)}` : '';
    rows.push([
      'Length',
      show('length', 'totalLength', totalLength),
      `${onBend}each end ${show('length', 'overlap', overlap.value)} overlap, by ${overlap.governing}, and ${show('length', 'taper', taper)} taper${asLaid}`,
      { formula: 'laminate/axial-extent' },
    ]);
  }
  return rows;
}

function wrapRows({ wrap, extent, laminate }: RepairDesign, show: Show): ShortRow[] {
  if (wrap === undefined) return [];
  const rolls = `${wrap.rolls} ${wrap.rolls === 1 ? 'roll' : 'rolls'}`;
  if (wrap.form === 'tape') {
    const { overallLength, passes, layers, layersPerPass, tapeLength } = wrap;
    const more = laminate !== undefined && layers > laminate.plies ? `, ${layers} laid` : '';
    return [
      [
        'Surface',
        show('length', 'overallLength', overallLength),
        `to prepare, at least${extent === undefined ? '' : sidesOfBend(extent).outside}: with the end bands of the tape`,
        { results: [overallLength] },
      ],
      [
        'Tape',
        show('length', 'tapeLength', tapeLength),
        `${rolls}; ${passes} ${passes === 1 ? 'pass' : 'passes'} of ${layersPerPass} layers${more}`,
        { formula: 'wrap/tape-plan' },
      ],
    ];
  }
  return [
    ...(extent === undefined
      ? []
      : [
          [
            'Surface',
            show('length', 'totalLength', extent.totalLength),
            'to prepare, at least',
            { formula: 'laminate/axial-extent' },
          ] as const,
        ]),
    [
      'Sheet',
      show('length', 'sheetLength', wrap.sheetLength),
      `${rolls}; ${wrap.layers} layers in ${wrap.bands} bands`,
      { results: [wrap.sheetLength] },
    ],
  ];
}

function mixRows(label: string, mix: MixDesign | 'none' | undefined, show: Show, shown: ShownBy): ShortRow[] {
  if (mix === undefined || mix === 'none') return [];
  const { mass, batches, base, hardener, kits } = mix;
  return [
    [
      label,
      show('mass', 'mass', mass),
      `${batches} ${batches === 1 ? 'batch' : 'batches'}: ${show('mass', 'base', base)} base + ${show('mass', 'hardener', hardener)} hardener each; ${kits} ${kits === 1 ? 'kit' : 'kits'}`,
      shown,
    ],
  ];
}

function sealRows({ seal }: RepairDesign, show: Show): ShortRow[] {
  if (seal === undefined || seal === 'none') return [];
  const tightened = seal.torque === undefined ? 'the line is without pressure' : show('moment', 'torque', seal.torque);
  return [
    [
      'Leak seal',
      tightened,
      `on the fasteners; pad ${show('length', 'padDiameter', seal.padDiameter)} across; it carries no end load`,
      { formula: 'seal/fastener-torque' },
    ],
  ];
}

const WAITS: readonly (readonly [StepId, string])[] = [
  ['putty', 'putty'],
  ['filler-wait', 'filler'],
  ['cure', 'laminate'],
];

/** Waits and the return by the one timeline. */
function hourRows({ timeline }: RepairDesign, show: Show): ShortRow[] {
  if (timeline === undefined) return [];
  const waits = WAITS.flatMap(([id, material]) => {
    const duration = stepAt(timeline, id)?.duration;
    if (duration === undefined) return [];
    const text = `${material} ${duration.known ? show('time', 'wait', duration.time) : 'not known'}`;
    return [{ text, results: duration.known ? [duration.time] : [] }];
  });
  const { earliestReturn } = timeline;
  const back = show('time', 'wait', leastOf(earliestReturn));
  return [
    [
      'Cure waits',
      '',
      `${waits.map(({ text }) => text).join(', ')}; each at least, then its hold point`,
      { results: waits.flatMap(({ results }) => results) },
    ],
    [
      'Return',
      back,
      earliestReturn.known
        ? 'after the start, at the earliest'
        : 'after the start, or later: not every time is stated (see the plan)',
      { results: waits.flatMap(({ results }) => results), isPart: true },
    ],
  ];
}

function siteRows({ site }: RepairDesign): ShortRow[] {
  if (site === undefined) return [];
  const waiting = site.reasons.filter(({ decision }) => decision !== 'go').map(({ check }) => check);
  const because = [...new Set(waiting)].join(', ');
  return [
    [
      'Site gate',
      site.decision.toUpperCase(),
      `${because === '' ? '' : `${because}; `}by the readings of the case`,
      { partOf: 'site/dew-point' },
    ],
  ];
}

function testRows({ acceptance }: RepairDesign, show: Show): ShortRow[] {
  if (acceptance === undefined) return [];
  const { medium, pressure, hold } = acceptance.pressureTest;
  const rows: ShortRow[] =
    medium === 'none'
      ? [['Pressure test', 'none', 'see what is done instead, in the sheet']]
      : isBeyondRepair(acceptance.pressureTest)
        ? [
            [
              'Pressure test',
              'none at this level',
              `${show('gauge pressure', 'pressure', pressure, 'up')} is above what the laminate resists that day, ${show('gauge pressure', 'resistance', acceptance.pressureTest.resistance)}`,
              { formula: 'acceptance/test-pressure' },
            ],
          ]
        : [
            [
              'Pressure test',
              show('gauge pressure', 'pressure', pressure, 'up'),
              `held ${show('time', 'hold', hold)}${medium === 'not stated' ? ', if it is made' : `, with ${medium}`}`,
              { formula: 'acceptance/test-pressure' },
            ],
          ];
  const { missing } = acceptance;
  if (missing.length > 0) rows.push(['Acceptance', 'needs', missing.map(({ field }) => field).join(', ')]);
  return rows;
}
