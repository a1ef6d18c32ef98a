import { sidesOfBend } from '../repair/design/side-of-bend.js';
import type { AcceptanceDesign, RepairDesign, RollsDesign, SiteDesign } from '../repair/index.js';
import { leastOf } from '../repair/timeline/duration.js';
import type { Block } from './document.js';
import { lineOnSheet } from './line-text.js';
import { formatToward } from './number.js';
import type { ChosenOptions } from './options.js';
import { type Show, showSafely } from './safe-side.js';

/** What the crew needs beside the design: the gate of the site, the rolls, what has to be shown at the end. */
export function siteWorkBlocks({ site, rolls, acceptance, extent }: RepairDesign, options: ChosenOptions): Block[] {
  const show = showSafely(options);
  return [
    ...(site === undefined ? [] : siteBlocks(site, show, options)),
    ...(rolls === undefined
      ? []
      : [{ sort: 'heading' as const, level: 2 as const, text: 'Laying the wrap' }, rows(rollRows(rolls, show))]),
    ...(acceptance === undefined
      ? []
      : acceptanceBlocks(acceptance, extent === undefined ? '' : sidesOfBend(extent).inside, show)),
  ];
}

function rows(table: readonly (readonly string[])[]): Block {
  return { sort: 'rows', rows: table };
}

/** A hold point on the day, not a part of the verdict: what speaks against it, and what would change that. */
function siteBlocks({ decision, reasons, ...site }: SiteDesign, show: Show, options: ChosenOptions): Block[] {
  const table: string[][] = [];
  if (site.dewPoint !== undefined && site.highestDewPoint !== undefined)
    table.push([
      site.isFrost === true ? 'Frost point' : 'Dew point',
      show('temperature', 'dewPoint', site.dewPoint),
      `${show('temperature', 'dewPoint', site.highestDewPoint, 'up')} at the worst edge of the instruments`,
    ]);
  if (site.margin !== undefined && site.steelNeeded !== undefined)
    table.push([
      'Steel above it',
      show('temperature difference', 'margin', site.margin, 'down'),
      `at the worst edge; the steel has to read ${show('temperature', 'steelNeeded', site.steelNeeded, 'up')}`,
    ]);
  if (site.humidityAtSteel !== undefined)
    table.push(['Humidity at the steel', show('ratio', 'humidity', site.humidityAtSteel), 'as read']);
  table.push([
    'Weather has to hold',
    site.holdTime.known || site.holdTime.atLeast !== undefined
      ? show('time', 'holdTime', leastOf(site.holdTime), 'up')
      : 'not known',
    site.holdTime.known
      ? 'from the gate to the end of the cure'
      : `${site.holdTime.atLeast === undefined ? '' : 'at least: '}${site.holdTime.because}`,
  ]);
  table.push([
    'Steel required',
    site.requiredGrade,
    `${show('length', 'profile', site.requiredProfile, 'up')} of profile; ${site.surfaceFrom === 'qualification' ? 'as the system was qualified' : `by the ${site.surfaceFrom}: no qualification is stated`}`,
  ]);
  const against = reasons.filter((reason) => reason.decision !== 'go');
  return [
    { sort: 'heading', level: 2, text: 'Site gate' },
    {
      sort: 'paragraph',
      text: `By the readings of the case: ${decision.toUpperCase()}. A hold point on the day: the verdict of the design does not depend on it.`,
    },
    rows(table),
    ...(against.length === 0
      ? []
      : [
          {
            sort: 'list' as const,
            items: against.map(
              (each) =>
                `${each.decision}: ${each.check}: ${lineOnSheet(each.because, options)}. What changes it: ${lineOnSheet(each.change, options)}.`,
            ),
          },
        ]),
  ];
}

function rollRows(rolls: RollsDesign, show: Show): string[][] {
  const { charge, chargeLength, chargeTime, allowedTime, workingTime, fits, wrapTime, stagger, remedies } = rolls;
  const table = [
    [
      'Wrap from the centre',
      show('length', 'end', rolls.end),
      `to each side; begins ${show('length', 'beforeDefect', rolls.beforeDefect)} before the defect at the end of life`,
    ],
    [
      'Ends',
      show('length', 'stagger', stagger),
      stagger === 0
        ? 'all passes end together: the end bands make the taper'
        : 'each pass inside the one below it: the taper',
    ],
  ];
  if (chargeTime !== undefined && allowedTime !== undefined && workingTime !== undefined)
    table.push([
      `Laying a ${charge}`,
      show('time', 'working', chargeTime, 'up'),
      `${show('length', 'tapeLength', chargeLength)} within ${show('time', 'working', allowedTime, 'down')} of a working time of ${show('time', 'working', workingTime, 'down')}: ${fits === true ? 'fits' : 'DOES NOT FIT'}`,
    ]);
  if (remedies?.longestCharge !== undefined)
    table.push(['What fits', show('length', 'tapeLength', remedies.longestCharge, 'down'), `as the longest ${charge}`]);
  if (remedies?.coolerThan !== undefined)
    table.push([
      'What fits',
      show('temperature', 'coolerThan', remedies.coolerThan),
      remedies.coolerHour === undefined
        ? 'or cooler, steel and air'
        : `or cooler, steel and air: ${show('time', 'coolerHour', remedies.coolerHour, 'up')} after the start`,
    ]);
  if (wrapTime !== undefined)
    table.push(['Whole wrap', show('time', 'working', wrapTime, 'up'), 'by the crew of the case']);
  return table;
}

/** As the instrument reads: a reading that reaches the number on paper reaches the limit. */
function hardnessText(value: number): string {
  return String(Number(formatToward(value, 4, 'up')));
}

function acceptanceBlocks(
  { hardness, missing, pressureTest: test, ...rest }: AcceptanceDesign,
  inside: string,
  show: Show,
): Block[] {
  const table = [
    hardness === undefined
      ? ['Hardness', 'not stated', 'nothing is accepted without that of the qualification']
      : [
          'Hardness, mean',
          `${hardnessText(hardness.leastMean)} ${hardness.scale}`,
          `of ${hardness.qualified} qualified; none below ${hardnessText(hardness.leastSingle)}${hardness.readings === undefined ? '' : `, ${hardness.readings} readings`}`,
        ],
    [
      'Thickness, least',
      show('length', 'thickness', rest.leastThickness, 'up'),
      `overlap ${show('length', 'leastOverlap', rest.leastOverlap, 'up')}${inside}`,
    ],
    ['Wrinkle, highest', show('length', 'wrinkle', rest.highestWrinkle, 'down')],
    [
      'Pressure test',
      show('gauge pressure', 'pressure', test.pressure, 'up'),
      test.medium === 'none'
        ? 'not made'
        : `${test.medium === 'not stated' ? 'if it is made' : `with ${test.medium}`}, held ${show('time', 'hold', test.hold, 'up')}`,
    ],
  ];
  if (test.instead !== undefined) table.push(['Instead', '', test.instead]);
  if (test.volume !== undefined && test.medium === 'liquid')
    table.push([
      test.liquid === 'fresh water' ? 'Water to fill' : 'Liquid to fill',
      show('volume', 'volume', test.volume),
      test.waterToAdd === undefined ? '' : `${show('volume', 'volume', test.waterToAdd)} more to reach the pressure`,
    ]);
  if (test.pressurePerKelvin !== undefined)
    table.push([
      'Blocked line moves',
      show('gauge pressure', 'pressure', test.pressurePerKelvin, 'up'),
      `for each ${show('temperature difference', 'step', 1)} of warming`,
    ]);
  if (test.storedEnergy !== undefined)
    table.push([
      'Stored energy',
      show('energy', 'energy', test.storedEnergy),
      test.distance === undefined || test.tntEquivalent === undefined
        ? ''
        : `as ${show('mass', 'mass', test.tntEquivalent)} of TNT; people at least ${show('length', 'sheetLength', test.distance, 'up')} away`,
    ]);
  return [
    { sort: 'heading', level: 2, text: 'Acceptance' },
    rows(table),
    ...(missing.length === 0
      ? []
      : [
          { sort: 'paragraph' as const, text: 'Missing for acceptance, not for the design:' },
          {
            sort: 'list' as const,
            items: missing.map(({ field, why, askWhom }) => `${field}: ${why}; ask ${askWhom}`),
          },
        ]),
  ];
}
