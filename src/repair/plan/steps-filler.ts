import type { Time } from '../../quantity/index.js';
import { exactly, line, roundedDown, roundedUp } from '../../quantity/index.js';
import type { MixDesign } from '../design/design.js';
import { MIXING_TIME } from '../mix-and-cure/mix.js';
import type { PlanFacts } from './facts.js';
import { batchLines, MIX_BY_HAND, NOT_THE_CLOCK, PRINT } from './mix-lines.js';
import { workPractice } from './practice.js';
import type { StepDraft } from './schedule.js';

/** Mixing and placing of all batches, one after the other. */
function placing(mix: MixDesign, rate: number): Time {
  return (mix.batches * MIXING_TIME + mix.mass / rate) as Time;
}

/** The filler, and its wait. */
export function fillerSteps(facts: PlanFacts): StepDraft[] {
  const { fillerMix: mix, extent, found, case: repairCase, seal } = facts;
  const { filler } = repairCase;
  if (filler === 'none' || mix === undefined) return [];
  const workingTime = facts.design.cures.filler === 'none' ? undefined : facts.design.cures.filler.workingTime;
  const wholeWrap = filler.underWholeWrap === true;
  const length = wholeWrap ? facts.rolls.end - facts.rolls.start : extent.defectLength;
  return [
    {
      id: 'filler',
      title: 'Mix and place the filler',
      sort: 'work',
      after: [seal === undefined ? 'gate' : 'putty'],
      lasts: () => placing(mix, filler.rate),
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
        line('Leave no edge or hump: radius {0} or more.', roundedUp('radius', 'length', 0.005)),
      ],
      uses: batchLines(mix, workingTime),
      practice: [
        MIX_BY_HAND,
        line(
          '{0} or more over a leak, {1} elsewhere.',
          exactly('filler', 'length', workPractice.fillerOverLeak),
          exactly('filler', 'length', workPractice.fillerElsewhere),
        ),
      ],
      goes: [
        line('One even colour in the pot; a little of each batch on the witness plate.'),
        line(
          'Diameter over it at most {0}.',
          roundedDown('diameter', 'length', found.outsideDiameter + 2 * filler.thicknessOverDefect),
        ),
      ],
      stops: [line('Streaks in the pot, a pot that grows hot or strings: throw the batch away, do not thin it.')],
      call: 'the designer when it gets thicker or longer than this',
      signs: 'foreman',
    },
    {
      id: 'filler-wait',
      title: 'Wait until the filler is firm',
      sort: 'hold point',
      after: ['filler'],
      lasts: facts.waitOf(filler.name, filler.cure),
      does: [line('Then abrade it to a dull, even surface and blow off the dust.')],
      goes: [PRINT, line('No greasy film; dull all over.')],
      stops: [NOT_THE_CLOCK, line('Soft or tacky places: wait, or cut them out.')],
      call: 'the maker of the filler',
      signs: 'foreman',
    },
  ];
}
