import { reaches } from '../../numeric/index.js';
import { practice } from '../../rules/index.js';
import type { Service } from '../case/case.js';
import { saysNothing } from '../case/says-nothing.js';
import { need, type Workbook } from '../job/workbook.js';
import { contentsWords, OXIDISING_WORDS, PLAINLY_HARMLESS } from './contents-words.js';

const WHO = 'the process engineer of the line: safety data sheet of the contents';

/**
 * A name that plainly says more than the list of hazards does: nobody knows which of the two is right, so it is asked. An
 * empty list holds for plain water and air; for all else somebody has to have looked, since no list of words is complete.
 */
export function askForHazards(work: Workbook): void {
  const { service } = work.case;
  const { contents, hazards, hazardsStatedBy } = service;
  const name = spelt(contents);
  if (saysNothing(contents)) {
    need(
      work,
      'service.contents',
      `"${contents}" names no contents: what people meet, what the materials stand and the class depend on it`,
      'the process engineer of the line',
    );
    return;
  }
  const unlooked = saysNothing(hazardsStatedBy);
  if (unlooked && OXIDISING_WORDS.test(name)) {
    need(
      work,
      'service.hazardsStatedBy',
      `the contents are called "${contents}", which feeds fire and burns with resin, oil and grease: no word in the list of hazards stands for that, so who judged the repair and the work for it`,
      WHO,
    );
  }
  if (!reaches(practice.hottestUnasked.value, service.designTemperature) && !hazards.includes('hot')) {
    need(
      work,
      'service.hazards',
      'the contents may be as hot as the design temperature, which burns whoever they reach, and the list of hazards does not say so: add "hot"',
      WHO,
    );
    return;
  }
  const lacking = lackingIn(name, hazards);
  if (lacking.length > 0) {
    const words = lacking.map((hazard) => `"${hazard}"`).join(' and ');
    need(
      work,
      'service.hazards',
      `the contents are called "${contents}", which stands for ${words}, and the list of hazards does not say so: add ${words}, or call the contents what they are if they are none of that`,
      WHO,
    );
  } else if (unlooked && hazards.length === 0 && !PLAINLY_HARMLESS.test(name.replaceAll(/[\s-]+/gu, ' ').trim())) {
    need(
      work,
      'service.hazards',
      `the contents are called "${contents}", the list of hazards is empty, and nobody is named who looked: list what they can do to people, or name in service.hazardsStatedBy who found nothing and by which data sheet`,
      WHO,
    );
  }
}

/** A name in plain letters and figures, whatever accents and small figures it was written with. */
export function spelt(contents: string): string {
  return contents.normalize('NFKD').replaceAll(/[\p{M}\p{Cf}]/gu, '');
}

function lackingIn(name: string, hazards: Service['hazards']): string[] {
  const lacking = new Set<string>();
  for (const [words, meant] of contentsWords) {
    if (!words.test(name)) continue;
    for (const hazard of meant) if (!hazards.includes(hazard)) lacking.add(hazard);
  }
  return [...lacking];
}
