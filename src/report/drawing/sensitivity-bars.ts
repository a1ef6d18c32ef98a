import type { OutcomeName } from '../../compare/outcome.js';
import type { Sensitivities } from '../../doubt/sensitivities.js';
import { filled, patterns } from './materials.js';
import { box, drawing, label, line } from './svg.js';

const MOST = 10;
const ROW = 17;
const TOP = 44;
/** Where a change of nothing stands; names are above their bar, since a path takes half of a telephone. */
const NOUGHT = 210;
const HALF = 150;

/**
 * The inputs that move an outcome most, the strongest first: a bar to the right where more of the input gives more of the
 * outcome. Nothing where no input moves it.
 */
export function sensitivityBars(found: Sensitivities, outcome: OutcomeName): string | undefined {
  const ranked = (found.ranked[outcome] ?? []).slice(0, MOST);
  const largest = Math.max(...ranked.map(({ change }) => Math.abs(change)));
  if (ranked.length === 0 || !(largest > 0)) return undefined;
  const heading = `${outcome.charAt(0).toUpperCase()}${outcome.slice(1)}: what moves it most`;
  // Several stand on one page, each with patterns of its own.
  const own = `ranking-${outcome.replaceAll(/[^a-z]+/gu, '-')}`;
  const height = TOP + ranked.length * 2 * ROW + 8;
  const moved = `each input by ${percent(found.share)}, temperatures by ${found.temperature} K`;
  return drawing(own, `${heading}, the strongest first: ${moved}`, height, [
    patterns(own),
    label(2, 12, heading),
    label(2, 27, moved),
    ...ranked.flatMap(({ path, change }, index) => {
      const y = TOP + index * 2 * ROW;
      const length = (Math.abs(change) / largest) * HALF;
      const right = change > 0;
      const text = `${right ? '+' : '-'}${percent(Math.abs(change))}`;
      return [
        label(2, y + 9, path),
        box(right ? NOUGHT : NOUGHT - length, y + 14, length, 11, filled(own, right ? 'laminate' : 'filler')),
        right ? label(NOUGHT + length + 5, y + 24, text) : label(NOUGHT - length - 5, y + 24, text, 'end'),
      ];
    }),
    line(NOUGHT, TOP + 10, NOUGHT, height - 4),
  ]);
}

function percent(share: number): string {
  return `${Number((100 * share).toPrecision(2))} %`;
}
