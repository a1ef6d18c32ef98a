import type { RepairCase } from '../case/case.js';
import { type Workbook, warn } from '../job/workbook.js';
import { isPressed } from './called.js';
import { contentsWords, SAFETY_WORDS, VACUUM_WORDS } from './contents-words.js';
import { spelt } from './hazards.js';

/** What words for readers say of the line, and whether the case states it too. */
interface Told {
  readonly words: RegExp;
  readonly means: string;
  readonly isStated: (repairCase: RepairCase) => boolean;
}

const TOLD: readonly Told[] = [
  ...contentsWords.map(([words, hazards]) => ({
    words,
    means: `contents that are ${hazards.join(' and ')}`,
    isStated: ({ service }: RepairCase) => hazards.every((hazard) => service.hazards.includes(hazard)),
  })),
  {
    words: SAFETY_WORDS,
    means: 'a line that lives hang on',
    isStated: ({ service }) => service.safetyCritical,
  },
  {
    words: VACUUM_WORDS,
    means: 'pressure from outside',
    isStated: ({ loads }) => isPressed(loads),
  },
  {
    words: /(?<!\bno )\bcrack(?:s|ed|ing)?\b(?! (?:tests?|was|were|found))/i,
    means: 'a crack',
    // A crack that is the defect is not covered, and is asked for nothing.
    isStated: ({ service }) => service.cracking !== 'none',
  },
  {
    words: /\b(?:(?:cast|ductile|gr[ae]y|nodular) iron|gusseisen|grauguss|fonte|ghisa)\b/i,
    means: 'a pipe that is not of steel',
    isStated: () => false,
  },
];

/** Title and note are for readers, and nothing is designed by them; what they plainly say is held against the case. */
export function warnOfTitle(work: Workbook): void {
  const { title, note = '' } = work.case;
  // What is done in an emergency is no line for one.
  const said = spelt(`${title}\n${note}`).replaceAll(/\bemergency (?=repair|work|job|order)/gi, '');
  for (const { words, means, isStated } of TOLD) {
    const [word] = words.exec(said) ?? [];
    if (word === undefined || isStated(work.case)) continue;
    warn(
      work,
      `The title or the note says "${word}", which stands for ${means}, and the case does not state that. Only the case is designed for: see which of the two is right.`,
    );
  }
}
