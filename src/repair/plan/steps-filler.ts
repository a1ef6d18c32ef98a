import type { Line } from '../../quantity/index.js';
import { exactly, line, roundedDown, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { timeToLay } from '../../wrap/index.js';
import type { Filler } from '../case/case.js';
import { laidLength } from '../wrap/wrap.js';
import { BLANK } from './blank.js';
import type { PlanFacts } from './facts.js';
import { batchLines, NOT_BY_TIME, PRINT } from './mix-lines.js';
import { scaleFor } from './scale.js';
import type { StepWords } from './step-words.js';

/** The filler, and its wait. */
export function fillerSteps(facts: PlanFacts): StepWords[] {
  const { fillerMix: mix, cures, extent, laminate, wrap, case: repairCase } = facts;
  const { filler } = repairCase;
  if (filler === 'none' || mix === undefined) return [];
  const share = practice.shareOfWorkingTime.value;
  const allowedTime = cures.filler === 'none' ? undefined : timeToLay({ workingTime: cures.filler.workingTime, share });
  const wholeWrap = filler.underWholeWrap === true;
  const bandsStay = repairCase.seal?.bands === 'left';
  const length = wholeWrap ? laidLength(wrap, extent) : extent.defectLength;
  return [
    {
      id: 'filler',
      title: 'Mix and place the filler',
      does: [
        line('Fill empty pockets first, then the collar. Press it on so that no air stays.'),
        line(
          'Collar {0} thick, {1} over the defect, {2} long along the pipe.',
          exactly('filler', 'length', filler.thickness),
          exactly('filler over the defect', 'length', filler.thicknessOverDefect),
          exactly('length of the filler', 'length', length),
        ),
        line(
          wholeWrap
            ? 'It lies under the whole wrap, as the system was qualified.'
            : 'It ends there: the overlap on each side stays bare, prepared steel. Wipe off what strays.',
        ),
        line(
          'Leave no edge or hump: radius {0} or more.',
          roundedUp('radius', 'length', practice.leastRadiusUnderWrap.value),
        ),
      ],
      uses: batchLines(mix, scaleFor(mix, facts.resinMix), allowedTime),
      goes: [
        line('One even colour in the pot; a little of each batch on the witness plate.'),
        line('Diameter over it at most {0}.', roundedDown('diameter', 'length', laminate.wrappedDiameter)),
        ...(bandsStay
          ? [
              line(
                `Fasteners under it stand off the pipe by: ${BLANK}; less than {0}.`,
                roundedDown('filler', 'length', filler.thickness),
              ),
            ]
          : []),
      ],
      stops: [
        line('Streaks in the pot, a pot that grows hot or strings: throw the batch away, do not thin it.'),
        ...(bandsStay
          ? [line('A fastener that stands out of the collar: no wrap over it; the designer plans a thicker one.')]
          : []),
        ...liftLines(filler),
      ],
      call: 'the designer when it gets thicker or longer than this',
      signs: 'foreman',
    },
    {
      id: 'filler-wait',
      title: 'Wait until the filler is firm',
      does: [
        line('Leave it alone. When a thumb leaves no print, abrade it to a dull, even surface and blow off the dust.'),
      ],
      goes: [PRINT, line('No greasy film; dull all over.')],
      stops: [NOT_BY_TIME, line('Soft or tacky places: wait, or cut them out.')],
      call: 'the maker of the filler',
      signs: 'foreman',
    },
  ];
}

/** Filler heats itself, the more the thicker it lies. */
function liftLines({ greatestLift }: Filler): Line[] {
  if (greatestLift === undefined) return [];
  return [
    line(
      'A place that takes more than {0} of filler at once: stop, it runs hot. The designer plans another lift, with its own wait.',
      roundedDown('greatest lift', 'length', greatestLift),
    ),
  ];
}
