import type { Time } from '../../quantity/index.js';
import { practice } from '../../rules/index.js';
import type { AcceptanceDesign, CureDesigns, RollsDesign, SealDesign } from '../design/design-work.js';
import { type Duration, notStated } from './duration.js';
import type { JobStep, StepId } from './timeline.js';

/** What sets the steps of a job and their times. */
export interface JobParts {
  readonly seal: SealDesign | 'none';
  readonly cures: CureDesigns;
  readonly rolls: RollsDesign;
  readonly acceptance: AcceptanceDesign;
  /** Mixing and placing of the filler. */
  readonly placing: Time | 'none';
}

/** The steps of a job in order, each with what it waits for and how long it takes. */
export function jobSteps({ seal, cures, rolls, acceptance, placing }: JobParts): JobStep[] {
  const steps: JobStep[] = [
    { id: 'permit', sort: 'hold point', after: [], takes: notStated },
    { id: 'stock', sort: 'work', after: [], takes: notStated },
    { id: 'survey', sort: 'hold point', after: ['permit'], takes: notStated },
  ];
  let ready: StepId = 'survey';
  // No steel is prepared beside an open leak: it is sealed first, on metal that is only roughly cleaned.
  if (seal !== 'none' && cures.putty !== 'none') {
    steps.push({ id: 'rough-cleaning', sort: 'work', after: [ready], takes: notStated });
    steps.push({ id: 'seal', sort: 'hold point', after: ['rough-cleaning', 'stock'], takes: notStated });
    steps.push({ id: 'putty', sort: 'hold point', after: ['seal'], takes: { cure: 'putty' } });
    ready = 'putty';
  }
  steps.push({ id: 'surface', sort: 'hold point', after: [ready], takes: notStated });
  steps.push({ id: 'gate', sort: 'hold point', after: ['surface', 'stock'], takes: lasting(0 as Time) });
  ready = 'gate';
  if (cures.filler !== 'none' && placing !== 'none') {
    steps.push({ id: 'filler', sort: 'work', after: [ready], takes: lasting(placing) });
    steps.push({ id: 'filler-wait', sort: 'hold point', after: ['filler'], takes: { cure: 'filler' } });
    ready = 'filler-wait';
  }
  const again: JobStep['takes'] = { since: 'surface', goodFor: practice.openTime.value };
  steps.push({ id: 'surface-again', sort: 'hold point', after: [ready], takes: again });
  const { wrapTime } = rolls;
  steps.push({
    id: 'wrap',
    sort: 'work',
    after: [ready, 'surface-again'],
    takes: wrapTime === undefined ? noCrew : lasting(wrapTime),
  });
  steps.push({ id: 'cure', sort: 'hold point', after: ['wrap'], takes: { cure: 'laminate' } });
  steps.push({ id: 'inspection', sort: 'hold point', after: ['cure'], takes: notStated });
  steps.push({ id: 'pressure-test', sort: 'hold point', after: ['inspection'], takes: testTime(acceptance) });
  steps.push({ id: 'return', sort: 'hold point', after: ['pressure-test'], takes: notStated });
  return steps;
}

const noCrew: Duration = { known: false, because: 'the case states no crew' };

function lasting(time: Time): Duration {
  return { known: true, time };
}

function testTime({ pressureTest: { medium, hold } }: AcceptanceDesign): Duration {
  if (medium === 'none') return { known: false, because: 'no pressure test is made' };
  if (medium === 'not stated') return { known: false, because: 'the case does not say whether the line is tested' };
  return lasting(hold);
}
