import type { Line } from '../../quantity/index.js';
import { exactly, line, roundedDown, roundedUp } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import { finishedDiameter } from '../../wrap/index.js';
import type { PlanFacts } from './facts.js';
import { batchLines } from './mix-lines.js';
import { scaleFor } from './scale.js';
import type { StepWords } from './step-words.js';
import { layingLines } from './wrap-laying.js';
import { remedyLines, timeLines } from './wrap-times.js';

/** Passes, rolls and batches of the wrap. */
export function wrapStep(facts: PlanFacts): StepWords {
  const { wrap, resinMix, found, laminate } = facts;
  const length = wrap.form === 'tape' ? wrap.tapeLength : wrap.sheetLength;
  return {
    id: 'wrap',
    title: `Lay the wrap: ${laminate.plies} plies`,
    does: layingLines(facts),
    uses:
      resinMix === undefined
        ? [line(`{0} of ${wrap.form}.`, roundedUp(`${wrap.form} length`, 'length', length))]
        : batchLines(resinMix, scaleFor(resinMix, facts.fillerMix), facts.rolls.allowedTime),
    practice: practiceLines(facts),
    goes: [
      ...timeLines(facts),
      line(`${laminate.plies} plies counted aloud; each turn laid tight, no wrinkle, no dry spot.`),
      line('Diameter when done about {0}.', exactly('diameter', 'length', diameterWhenDone(facts))),
    ],
    stops: [
      line('A batch or roll that stiffens before it lies: cut it off, throw it away, do not stretch it.'),
      line('Rain, sweating steel, a turn that strayed: stop, take the turn back while it is wet.'),
      ...remedyLines(facts),
    ],
    call: found.throughWall ? 'the designer; on a weep from below the area authority' : 'the designer',
    signs: 'foreman and inspector',
  };
}

/** Only where neither the case nor the design has a figure of its own. */
function practiceLines({ resinMix, case: { crew } }: PlanFacts): Line[] {
  const lines: Line[] = [];
  if (resinMix === undefined && crew?.soakTime === undefined) {
    lines.push(
      line('Tape that water activates: soak about {0}.', exactly('soaking', 'time', practice.soakingTime.value)),
    );
  }
  lines.push(
    line('Bare steel older than {0} is prepared again.', roundedDown('open time', 'time', practice.openTime.value)),
  );
  return lines;
}

function diameterWhenDone({ laminate, wrap: plan, case: { laminate: system, wrap } }: PlanFacts): number {
  return finishedDiameter({
    outsideDiameter: laminate.wrappedDiameter,
    layers: plan.form === 'tape' ? plan.passes : laminate.plies,
    layerThickness: system.plyThickness,
    overlap: wrap.form === 'tape' ? wrap.overlap : undefined,
  });
}
