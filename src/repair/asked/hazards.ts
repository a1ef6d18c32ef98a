import type { Service } from '../case/case.js';
import { need, type Workbook } from '../job/workbook.js';
import { contentsWords } from './contents-words.js';

/** A name that plainly says more than the list of hazards does: nobody knows which of the two is right, so it is asked. */
export function askForHazards(work: Workbook): void {
  const { service } = work.case;
  const lacking = lackingIn(service);
  if (lacking.length === 0) return;
  const words = lacking.map((hazard) => `"${hazard}"`).join(' and ');
  need(
    work,
    'service.hazards',
    `the contents are called "${service.contents}", which stands for ${words}, and the list of hazards does not say so: add ${words}, or call the contents what they are if they are none of that`,
    'the process engineer of the line: safety data sheet of the contents',
  );
}

function lackingIn({ contents, hazards }: Service): string[] {
  const lacking = new Set<string>();
  for (const [words, meant] of contentsWords) {
    if (!words.test(contents)) continue;
    for (const hazard of meant) if (!hazards.includes(hazard)) lacking.add(hazard);
  }
  return [...lacking];
}
