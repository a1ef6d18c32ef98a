import type { Line } from '../../quantity/index.js';
import { exactly, line, roundedDown, roundedUp, torqued } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { timeToLay } from '../../wrap/index.js';
import { BLANK } from './blank.js';
import type { PlanFacts } from './facts.js';
import { NOT_BY_TIME, PRINT } from './mix-lines.js';
import type { StepWords } from './step-words.js';
import { torqueTool } from './torque-tool.js';

/** The leak is held by putty, sheet and band, and the putty has to be firm. */
export function sealSteps(facts: PlanFacts): StepWords[] {
  const { seal, case: repairCase } = facts;
  const asked = repairCase.seal;
  if (seal === undefined || asked === undefined) return [];
  const { band, sheet, putty } = asked;
  const share = practice.shareOfWorkingTime.value;
  const times = facts.cures.putty === 'none' ? undefined : facts.cures.putty;
  // The torque holds the pressure that it was computed for, not the highest at which a seal may be tried.
  const highest = roundedDown('line pressure', 'gauge pressure', facts.line.pressure);
  const isEmpty = facts.line.pressure === 0;
  const pad = roundedUp('pad', 'length', seal.padDiameter);
  const wall = roundedUp('remaining wall', 'length', repairCase.defect.remainingWall);
  const does: Line[] = [
    isEmpty
      ? line('The line is empty and vented: nothing at the hole.')
      : line('Line pressure {0} or less: read it now.', highest),
    line(`Bend the sheet to the pipe${seal.forming === 'pre-roll' ? ': roll it first, or it springs' : ''}.`),
    line(
      `Knead the putty (${putty.name}) and press a pad {0} across over the hole, sheet on it, ${band.count === 1 ? 'band over it' : `${band.count} bands side by side`}.`,
      pad,
    ),
  ];
  if (seal.torque !== undefined)
    does.push(
      line(
        `Tighten to {0} with a ${torqueTool(seal.torque)}, little by little; that is rounded up to a step of its scale. No other tool: by hand a spanner gives many times as much.`,
        torqued('torque', seal.torque),
      ),
    );
  const seconds: Line[] =
    times === undefined
      ? []
      : [
          line(
            'Press the pad on within {0} of the start of kneading.',
            roundedDown('working time', 'time', timeToLay({ workingTime: times.workingTime, share })),
          ),
        ];
  return [
    {
      id: 'rough-cleaning',
      title: 'Clean roughly for the seal',
      does: [
        line(
          'By hand, with scraper and brush, take off loose rust, paint, oil and dirt where pad, sheet and bands will lie.',
        ),
        line('At least {0} across at the hole: no hammer, no power tool, nothing pushed into it.', pad),
        line(isEmpty ? 'Dry it with cloths.' : 'Dry it with cloths as far as the leak lets you.'),
      ],
      goes: [line('Pad, sheet and bands will lie on firm metal, without flakes.')],
      stops: [line('Wall that gives under the scraper, a hole that grows, a second leak.')],
      call: isEmpty ? 'the designer' : 'the designer; on a leak that grows the area authority',
      signs: 'foreman',
    },
    {
      id: 'seal',
      title: 'Seal the leak',
      does: [...does, ...seconds],
      uses: [
        line(
          `${band.count} of band, {0} each, {1} by {2}.`,
          roundedUp('band', 'length', seal.bandLength),
          exactly('width', 'length', band.width),
          exactly('thickness', 'length', band.thickness),
        ),
        line(
          'Sheet {0} thick and at most {1} across, corner to corner.',
          exactly('sheet', 'length', sheet.thickness),
          roundedDown('sheet across', 'length', sheet.across ?? seal.padDiameter),
        ),
      ],
      goes: [
        line(
          `Before the band: wall all round the ring under pad, sheet and bands, least ${BLANK}; {0} or more, and no second pinhole.`,
          wall,
        ),
        line(isEmpty ? 'No damp at the pad.' : 'No drop and no damp at the pad; the gauge stands still.'),
      ],
      stops: [
        line('Less wall than {0} under the band: no band. It would open the next hole.', wall),
        isEmpty
          ? line('Any drop from the hole: the line is not empty. A sheet that springs.')
          : line(
              'More than {0} in the line, a weep that tightening to the torque does not stop, a sheet that springs.',
              highest,
            ),
        line(
          'A sheet or band of stainless steel that touches bare steel: putty or tape goes between, or the rim corrodes.',
        ),
        line(
          'Restraints that do not take {0}: the seal carries no load along the pipe.',
          roundedUp('end load', 'force', seal.endLoadNotCarried),
        ),
      ],
      call: isEmpty
        ? 'the area authority: the isolation passes; never tighten beyond the torque'
        : 'the area authority: lower the pressure; never tighten beyond the torque',
      signs: 'foreman',
    },
    {
      id: 'putty',
      title: 'Wait until the putty takes no print',
      does: [
        line(`Leave the ${band.count === 1 ? 'band' : 'bands'} alone until the putty is firm; look for damp.`),
        ...bandLines(facts),
      ],
      goes: [PRINT, line('Dry all round.')],
      stops: [NOT_BY_TIME, line('Damp: back to the seal.')],
      call: 'the designer',
      signs: 'foreman',
    },
  ];
}

/** The laminate is designed for what lies on the steel then, and for nothing larger. */
function bandLines({ laminate, case: { seal }, line: atWork }: PlanFacts): Line[] {
  const { footprint } = laminate;
  if (footprint === undefined || seal === undefined) return [];
  const covered = roundedDown('covered steel', 'length', footprint.diameter);
  if (seal.bands === 'left')
    return [
      line(
        'The bands stay, {0} of pipe or less under them and the sheet: cut their ends off short and fill over the fasteners, round and smooth, or they cut the wrap. The laminate is designed for a ring that bonds nowhere there.',
        roundedDown('length covered', 'length', footprint.length),
      ),
    ];
  return [
    atWork.pressure === 0
      ? line('When the putty is firm, take the bands off. Damp now: the line is not empty; back to the isolation.')
      : line(
          'When the putty is firm, take the bands off, at {0} or less in the line. Damp now: put them on again, and back to the seal.',
          roundedDown('line pressure', 'gauge pressure', atWork.pressure),
        ),
    line(
      'Measure what still covers the steel: {0} across or less, corner to corner. More: stop, the laminate is too thin for it.',
      covered,
    ),
  ];
}
