import type { GaugePressure } from '../quantity/index.js';
import type { Seal } from '../repair/case/case.js';
import { pressureAtWork } from '../repair/found/pressure-at-work.js';
import type { RepairDesign, SealDesign } from '../repair/index.js';
import type { Block } from './document.js';
import type { ChosenOptions } from './options.js';
import { type Show, showSafely } from './safe-side.js';
import { shownValue } from './shown-value.js';

const LIMITS: Readonly<Record<SealDesign['limitedBy'], string>> = {
  site: 'the limit of the site',
  strap: 'the band',
  fastener: 'the fastener',
  sheet: 'the sheet over the hole',
  pipe: 'the thinned pipe under the band',
};

function sealRows(design: SealDesign, linePressure: GaugePressure, show: Show, given: Show): string[][] {
  const { fastenerTension, torque, strapStress, contactPressure, jet } = design;
  const rows = [
    [
      'Highest line pressure',
      show('gauge pressure', 'highestPressure', design.highestPressure),
      `set by ${LIMITS[design.limitedBy]}; at another torque; the torque below is for ${given('gauge pressure', 'linePressure', linePressure)}`,
    ],
    ['Pad', show('length', 'padDiameter', design.padDiameter), `across, governed by the ${design.padGovernedBy}`],
    [
      'Force on the pad',
      show('force', 'forceOnPad', design.forceOnPad),
      `${show('force', 'forceOnHole', design.forceOnHole)} on the hole alone`,
    ],
    ['Band', show('length', 'bandLength', design.bandLength), 'cut length, with the overlap for the fastener'],
  ];
  if (fastenerTension !== undefined)
    rows.push(['Tension, each fastener', show('force', 'fastenerTension', fastenerTension), 'holds the pad']);
  if (torque !== undefined)
    rows.push(['Torque', show('moment', 'torque', torque), 'its low end of scatter still gives that tension']);
  if (strapStress !== undefined)
    rows.push(['Stress in the band', show('stress', 'strapStress', strapStress), 'at the high end of scatter']);
  if (contactPressure !== undefined)
    rows.push([
      'Pressure on the pipe',
      show('gauge pressure', 'contactPressure', contactPressure),
      'under the band, at the high end of scatter',
    ]);
  rows.push([
    'End load',
    show('force', 'endLoadNotCarried', design.endLoadNotCarried),
    'along the pipe at the design pressure: the seal carries none of it',
  ]);
  if (jet !== undefined) {
    const { speed, volumeFlow, massFlow, regime } = jet;
    const out = [
      speed === undefined ? undefined : show('speed', 'jet', speed),
      volumeFlow === undefined ? undefined : show('volume flow', 'volumeFlow', volumeFlow),
      massFlow === undefined ? undefined : show('mass flow', 'massFlow', massFlow),
      regime,
    ].filter((part) => part !== undefined);
    rows.push(['Jet from the open hole', show('force', 'reaction', jet.reaction), ['pushes back', ...out].join('; ')]);
  }
  return rows;
}

/** The seal in words, in the order of the work. */
function sealSteps(design: SealDesign, seal: Seal, linePressure: GaugePressure, show: Show, given: Show): string[] {
  const { sheet, band, putty } = seal;
  const tighten =
    design.torque === undefined
      ? 'the line is without pressure: tighten until the sheet lies on the putty all round'
      : `tighten evenly to ${show('moment', 'torque', design.torque)} and no further`;
  return [
    `Bring the line to ${given('gauge pressure', 'linePressure', linePressure)} or less, the pressure that the torque is for, and keep it there; where it rises, step back.`,
    `Putty (${putty.name}): a pad at least ${show('length', 'padDiameter', design.padDiameter)} across, centred on the hole.`,
    design.forming === 'pre-roll'
      ? `Roll the sheet of ${given('length', 'thickness', sheet.thickness)} to the radius of the pipe first, or it springs back; lay it over the whole pad.`
      : `Lay the sheet of ${given('length', 'thickness', sheet.thickness)} over the whole pad; it bends to the pipe without yielding.`,
    `${band.count === 1 ? 'One band' : `${band.count} bands side by side`}, ${given('length', 'width', band.width)} wide, over the pad, with the fastener away from it; ${tighten}.`,
    'Hold until the putty takes no print and nothing weeps; the laminate goes on a dry, prepared surface only.',
  ];
}

/** How the leak is held before the wrap: the numbers, then the work in words. */
export function sealBlocks(
  { verdict, seal: design, case: { seal, line } }: RepairDesign,
  options: ChosenOptions,
): Block[] {
  if (design === undefined || design === 'none' || seal === undefined) return [];
  const linePressure = pressureAtWork(line);
  const show = showSafely(options);
  const given: Show = (kind, name, value) => shownValue(kind, name, value, options, false);
  return [
    { sort: 'heading', level: 2, text: 'Leak seal, before the wrap' },
    { sort: 'rows', rows: sealRows(design, linePressure, show, given) },
    // Nobody is told how to tighten a seal that may not be tried.
    ...(verdict === 'designed'
      ? [{ sort: 'list' as const, items: sealSteps(design, seal, linePressure, show, given) }]
      : []),
  ];
}
