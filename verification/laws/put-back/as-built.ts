import { change, type Fault } from './fault.js';

/** The repair as it was made. */

const LAW = 'as built';

export const ofAsBuilt: readonly Fault[] = [
  {
    did: 'the thickness as built was held to the computed one alone: 0.05 mm of two plies of 0.8 met',
    changes: [change('repair/as-built/points', 'laminate.leastPlies', '1', ['leastPlies: ', ''])],
    law: LAW,
    says: /below the least meets/u,
  },
  {
    did: 'a repair that has to come off was good for a pressure',
    changes: [change('repair/as-built/rating', 'against.length > 0', 'false')],
    law: LAW,
    says: /is good for/u,
  },
  {
    did: 'a thickness that nobody measured counted as full',
    changes: [
      change(
        'repair/as-built/counted',
        'plies === undefined || measuredThickness === undefined',
        'plies === undefined',
      ),
      change(
        'repair/as-built/counted',
        'countedThickness({ plies, measuredThickness, plyThickness, systemPly })',
        'countedThickness({ plies, measuredThickness: (measuredThickness ?? plies * plyThickness) as Length, plyThickness, systemPly })',
      ),
      change('repair/as-built/rating', 'against.length > 0', "against.some(({ point }) => point !== 'thickness')"),
    ],
    law: LAW,
    says: /nobody measured is good for|pressure/u,
  },
  {
    did: 'resin without fibre counted in the rating of a laminate that it had left too thin',
    changes: [
      change(
        'repair/as-built/rating',
        'countedAsLaid(design, record)',
        'countedAsLaid(design, { ...record, inspection: undefined })',
      ),
    ],
    law: LAW,
    says: /resin without fibre holds/u,
  },
  {
    did: 'a thickness met whose layers were too thin on their witness',
    changes: [change('repair/as-built/points', 'reaches(counted, laminate.thickness.value)', 'true')],
    law: LAW,
    says: /that the layers do not have/u,
  },
  {
    did: 'a loss longer or wider than designed for met',
    changes: [change('repair/as-built/loss', 'reaches(limit.value, found)', 'true')],
    law: LAW,
    says: /a loss (?:longer|wider) than surveyed|loss (?:length|width)/u,
  },
  {
    did: 'a cure at 100 degC met where 40 was tested',
    changes: [change('repair/as-built/acceptance', 'equivalentTimeLeavesTestedSpan({ ...history, steps })', 'false')],
    law: LAW,
    says: /hotter than tested meets/u,
  },
  {
    did: 'batches of a hundredth of the mass met',
    changes: [change('repair/as-built/batches', 'reaches(mixed, least)', 'true')],
    law: LAW,
    says: /hundredth of the mass/u,
  },
  {
    did: 'a pack without its expiry met',
    changes: [change('repair/as-built/batches', 'batch.useBefore === undefined', 'false')],
    law: LAW,
    says: /no expiry/u,
  },
  {
    did: 'a batch without its day of mixing met',
    changes: [change('repair/as-built/batches', 'batch.mixedOn === undefined', 'false')],
    law: LAW,
    says: /no day of mixing/u,
  },
  {
    did: 'steel whose salts nobody measured met',
    changes: [change('repair/as-built/points', 'read === undefined', 'false', ['if (', ')'])],
    law: LAW,
    says: /salts that nobody/u,
  },
  {
    did: 'a test at three times its pressure met',
    changes: [change('repair/as-built/pressure-test', 'reaches(value, highest)', 'true')],
    law: LAW,
    says: /three times its pressure/u,
  },
];
