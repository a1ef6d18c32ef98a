import type { Amount, Line } from '../../quantity/index.js';
import { exactly, joinLines, line, roundedUp, saidIn } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { JointDesign, SheetDesign } from '../design/design.js';
import { sidesOfBend } from '../design/side-of-bend.js';
import type { PlanFacts } from './facts.js';

/** Passes and rolls beyond this many are not written out one by one. */
const mostListed = practice.mostListed.value;

/** From where to where, pass by pass and roll by roll. */
export function layingLines(facts: PlanFacts): Line[] {
  const { rolls, wrap, case: repairCase } = facts;
  const lines = [
    line(
      'Start {0} before the centre of the defect, end {1} beyond it.',
      roundedUp('start', 'length', -rolls.start),
      roundedUp('end', 'length', rolls.end),
    ),
    ...formLines(facts),
    ...bendLines(facts),
  ];
  const { crew, resin } = repairCase;
  if (crew !== undefined && crew.crews > 1) {
    lines.push(
      line(
        wrap.form === 'tape'
          ? 'One crew lays the tape: a helix is never divided. The others mix, soak and hand on.'
          : `${crew.crews} crews side by side, each on bands of its own, all on one layer.`,
      ),
    );
  }
  if (crew?.soakTime !== undefined && crew.soakTime > 0) {
    lines.push(line('Soak each roll for {0}.', exactly('soaking', 'time', crew.soakTime)));
  }
  if (resin !== 'none') lines.push(line('Wet the steel, then each layer; roll out the air as you go. No dry fibre.'));
  lines.push(...passLines(facts));
  if (wrap.form === 'tape') lines.push(...rollLines(facts), line('Use each roll up before the next is opened.'));
  lines.push(taperLine(facts));
  return lines;
}

/** On a bend every length is one along its outside, and so is the overlap that must not get less. */
function bendLines({ wrap, extent: { insideLength } }: PlanFacts): Line[] {
  if (wrap.form === 'sheet' || wrap.insideOverlap === undefined || insideLength === undefined) return [];
  return [
    line('Lengths of the tape and its passes are measured along the outside of the bend.'),
    line(
      'The turns fan out: keep the overlap along the outside, where they spread; along the inside they close up to an overlap of about {0}.',
      exactly('overlap inside', 'ratio', wrap.insideOverlap),
    ),
    line('Steel that shows between two turns at the outside is a gap: take the turn back while it is wet.'),
  ];
}

function formLines({ wrap, laminate: { joints }, case: { wrap: stock } }: PlanFacts): Line[] {
  if (wrap.form === 'sheet') return sheetLines(wrap, joints);
  return [
    line(
      `${wrap.passes === 1 ? 'One pass: it' : `${wrap.passes} passes to and fro: each`} begins and ends with one full turn on the spot.`,
    ),
    line(
      'Each turn covers {0} of the one before: rather a little more, never less.',
      exactly('overlap', 'ratio', stock.form === 'tape' ? stock.overlap : 0),
    ),
  ];
}

/** In bands: one turn a layer, so that each layer can have its joints elsewhere. */
function sheetLines({ layers, finalLap }: SheetDesign, joints: JointDesign | undefined): Line[] {
  const lap = exactly('lap of a turn', 'length', finalLap);
  if (joints === undefined) return [line(`${layers} layers of one band; the last turn runs {0} past its start.`, lap)];
  return [
    line(
      `${layers} layers, laid one after another, each of bands side by side and one turn round the pipe: finish a layer before the next.`,
    ),
    line('Each turn runs {0} past its start; set these laps a quarter turn on from layer to layer.', lap),
    line(
      `Mark the start of the wrap on the pipe and measure every band from it. Joints of layers must not come together: only ${joints.carryingPlies} layers carry along the pipe where they are as planned, fewer where they are not.`,
    ),
    line(
      'Each band laps its neighbour by {0}, a figure of coating tapes: the lap carries nothing, the layers that go through beside it do. The outer bands are cut to the width given.',
      exactly('side lap', 'length', practice.sideLap.value),
    ),
  ];
}

/** One row a layer: where each band begins, and how wide it is. */
function layerLines({ rolls: { passes } }: PlanFacts): Line[] {
  const lines: Line[] = [];
  for (const layer of new Set(passes.map(({ pass }) => pass))) {
    const bands: Line[] = [];
    for (const { pass, begins, width } of passes) {
      if (pass !== layer || begins === undefined || width === undefined) continue;
      const at = exactly('band begins', 'length', begins);
      bands.push(line('{0} ({1} wide)', at, exactly('width of band', 'length', width)));
    }
    lines.push(saidIn(joinLines(bands, ', '), (text) => `Layer ${layer}: bands begin ${text} from the start.`));
  }
  return lines;
}

function passLines(facts: PlanFacts): Line[] {
  const { rolls, wrap, laminate } = facts;
  if (laminate.joints !== undefined) return layerLines(facts);
  const unit = wrap.form === 'tape' ? 'Pass' : 'Band';
  const lines = rolls.passes.slice(0, mostListed).map((pass) => {
    const way = wrap.form === 'tape' ? `, ${pass.direction}` : '';
    const length = exactly(`${wrap.form} length`, 'length', pass.tapeLength);
    return line(
      `${unit} ${pass.pass}${way}: {0} of ${wrap.form}, to {1} ${side(pass.to)}.`,
      length,
      distance('to', pass.to),
    );
  });
  if (rolls.passes.length > mostListed) {
    lines.push(line(`Go on in the same way to ${unit.toLowerCase()} ${rolls.passes.length}.`));
  }
  return lines;
}

function rollLines({ rolls: { rolls } }: PlanFacts): Line[] {
  const lines = rolls
    .slice(0, mostListed)
    .map(({ roll, endsInPass, endsAt }) =>
      line(`Roll ${roll} ends in pass ${endsInPass}, {0} ${side(endsAt)}.`, distance('roll ends', endsAt)),
    );
  if (rolls.length > mostListed) lines.push(line(`Go on in the same way to roll ${rolls.length}.`));
  return lines;
}

/** A position along the pipe as people measure it: how far, and to which side. */
function distance(name: string, position: number): Amount {
  return exactly(name, 'length', Math.max(position, -position));
}

function side(position: number): string {
  return position < 0 ? 'before the centre' : 'beyond the centre';
}

function taperLine({ rolls, extent, wrap }: PlanFacts): Line {
  const taper = roundedUp('taper', 'length', extent.taper);
  const side = sidesOfBend(extent).inside;
  if (rolls.stagger === 0)
    return line(`All passes end together: the last turns carry fewer layers and make the taper of {0}${side}.`, taper);
  return line(
    `Each ${wrap.form === 'tape' ? 'pass' : 'layer'} starts and ends {0} inside the one below it: the taper of {1}${side} on each side.`,
    roundedUp('stagger', 'length', rolls.stagger),
    taper,
  );
}
