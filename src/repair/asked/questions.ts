import type { RepairCase } from '../case/case.js';
import { saysNothing } from '../case/says-nothing.js';
import type { MissingInput } from '../design/design.js';

/** A field that a first screening leaves out and a design to sign needs: no number waits for it, a verdict does. */
export interface Question extends MissingInput {
  readonly isOpen: (repairCase: RepairCase) => boolean;
}

/** Every one of them. What the line carries, as it is read from the name of the contents, is asked beside them. */
export const questions: readonly Question[] = [
  {
    field: 'service.surge',
    why: 'a pump that starts or a valve that shuts can lift the pressure above that of the design: the surge, or that the design pressure holds it',
    askWhom: 'the process engineer of the line',
    isOpen: ({ service }) => service.surge === undefined,
  },
  {
    field: 'service.cracking',
    why: 'sour or stress-corrosion service cracks steel under its corrosion, and no strength method for metal loss holds for cracks: the environment, or none',
    askWhom: 'the corrosion engineer of the line',
    isOpen: ({ service }) => service.cracking === undefined,
  },
  {
    field: 'service.cracking.test',
    why: 'the service cracks steel: a test of the whole area under the wrap that found no crack, with its method and day',
    askWhom: 'the inspector',
    isOpen: ({ service: { cracking } }) => cracking !== undefined && cracking !== 'none' && saysNothing(cracking.test),
  },
  {
    field: 'defect.nearestAttachment',
    why: 'a wrap that runs over a weld, a branch, a support or a flange is no wrap on straight pipe: how far the nearest is from the edge of the loss',
    askWhom: 'the inspector',
    isOpen: ({ defect }) => defect.nearestAttachment === undefined,
  },
  {
    field: 'laminate.transitionCuredAt',
    why: 'a laminate that cures colder than the sample softens earlier than the sample did: the temperature at which the sample was cured',
    askWhom: 'the maker of the repair system: qualification report',
    isOpen: ({ laminate }) => laminate.transitionCuredAt === undefined,
  },
  {
    field: 'laminate.fibre',
    why: 'carbon on steel corrodes the steel where nothing lies between them: glass or carbon',
    askWhom: 'the maker of the repair system',
    isOpen: ({ laminate }) => laminate.fibre === undefined,
  },
  {
    field: 'laminate.isolatingLayer',
    why: 'the fibre is carbon: what keeps it off the steel, as the system was qualified',
    askWhom: 'the maker of the repair system: qualification report',
    isOpen: ({ laminate }) => laminate.fibre === 'carbon' && saysNothing(laminate.isolatingLayer),
  },
  {
    field: 'filler.greatestLift',
    why: 'a thick pour of filler heats itself until it cracks or burns: the greatest thickness that may be placed at once',
    askWhom: 'the maker of the filler',
    isOpen: ({ filler }) => filler !== 'none' && filler.greatestLift === undefined,
  },
  {
    field: 'acceptance.pressureTest.lowestRating',
    why: 'the test loads all that lies within the length under test: the lowest rating of a flange, valve or hose there',
    askWhom: 'the owner of the line: piping class and isometric',
    isOpen: ({ acceptance }) => {
      const test = acceptance?.pressureTest;
      return test !== undefined && test !== 'none' && test.lowestRating === undefined;
    },
  },
];
