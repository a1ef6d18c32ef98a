import { change, type Fault } from './fault.js';

/** The leak: its seal, what lies under the laminate, who works at it. */

const HELD = 'holds by itself';

export const ofLeak: readonly Fault[] = [
  {
    did: 'a live leak without a seal was designed',
    changes: [change('repair/seal/seal', 'linePressure === 0', 'true', ['if (', ') {'])],
    law: 'no word on the seal of a live leak',
    says: /designed/u,
  },
  {
    did: 'the laminate over a seal began at the rim of a hole of 15 mm',
    changes: [
      change('repair/laminate/leak-resistance', 'footprint.diameter', 'Math.min(footprint.diameter, 0.015)', [
        'holeDiameter: ',
        '',
      ]),
    ],
    law: HELD,
    says: /more energy/u,
  },
  {
    did: 'bands that stay counted as taken off',
    changes: [change('repair/laminate/footprint', "bands === 'left'", 'false')],
    law: HELD,
    says: /bands|bonded nowhere/u,
  },
  {
    did: 'nobody asked whether the bands stay',
    changes: [
      change('repair/laminate/footprint', 'bands === undefined', 'false', ['if (', ')\n    need(']),
      change('repair/laminate/footprint', 'collar === undefined || bands === undefined', 'collar === undefined'),
    ],
    law: 'no word on the bands',
    says: /designed/u,
  },
  {
    did: 'nobody asked how large the sheet is',
    changes: [
      change(
        'repair/laminate/footprint',
        "asked.sheet.across ?? needExtent(work, 'seal.sheet.across', 'sheet')",
        'asked.sheet.across ?? 0',
      ),
    ],
    law: 'no word on the sheet',
    says: /designed/u,
  },
  {
    did: 'nobody asked how large the collar is',
    changes: [
      change(
        'repair/laminate/footprint',
        "asked.collar ?? needExtent(work, 'seal.collar', 'collar')",
        "asked.collar ?? 'none'",
      ),
    ],
    law: 'no word on the collar',
    says: /designed/u,
  },
  {
    did: 'a sheet round more than half the pipe was bonded beside it',
    changes: [change('repair/laminate/footprint', 'Math.max(padDiameter, sheetSize, collarSize) > half', 'false')],
    law: HELD,
    says: /bonded nowhere/u,
  },
  {
    did: 'overlap and taper were those of the plies asked for, where passes and laps lay more',
    changes: [change('repair/laminate/extent', 'thicknessAsLaid(work, laminate)', 'laminate.laidThickness')],
    law: HELD,
    says: /what lies there/u,
  },
  {
    did: 'the overlap began at the defect, under the sheet',
    changes: [
      change(
        'repair/laminate/extent',
        '{ overlap, defectLength, taperLength: taper }',
        '{ overlap, defectLength: found.lengthAtEndOfLife, taperLength: taper }',
      ),
    ],
    law: HELD,
    says: /room for both overlaps/u,
  },
  {
    did: 'a bond that was tested over a small seal counted over any',
    changes: [
      change(
        'repair/laminate/bond-energy',
        "footprint.bonded === 'beside it' && footprint.diameter <= overSeal.footprint",
        'true',
      ),
    ],
    law: HELD,
    says: /more energy/u,
  },
  {
    did: 'nobody asked what the contents do to the resin',
    changes: [change('repair/limits/contents', 'lacks === undefined', 'true')],
    law: 'no word on what the resin stands',
    says: /designed/u,
  },
  {
    did: 'sulphuric acid went through the hole of a resin for water',
    changes: [
      change('repair/limits/contents', 'named(stated.contents) !== named(repairCase.service.contents)', 'false'),
    ],
    law: 'contents that the resin was not tested in',
    says: /designed/u,
  },
  {
    did: 'nobody asked what the contents do to the putty',
    changes: [change('repair/limits/contents', 'seal !== undefined', 'false')],
    law: 'no word on what the putty stands',
    says: /designed/u,
  },
  {
    did: 'a live leak of gas was sealed by hand',
    changes: [change('repair/seal/by-hand', "phase !== 'liquid'", 'false')],
    law: 'gas that leaks and is sealed by hand',
    says: /designed/u,
  },
  {
    did: 'a live leak of a hazard was sealed by hand',
    changes: [change('repair/seal/by-hand', 'hazards.length > 0', 'false')],
    law: HELD,
    says: /hazard is sealed by hand/u,
  },
  {
    did: 'a live leak was sealed by hand at any pressure',
    changes: [change('repair/seal/by-hand', 'pressureDifference > highestPressureByHand.value', 'false')],
    law: HELD,
    says: /above 7 bar/u,
  },
  {
    did: 'bands came off a live leak, and putty alone held it',
    changes: [change('repair/laminate/footprint', 'pressureAtWork(atWork) === 0', 'true')],
    law: HELD,
    says: /putty alone/u,
  },
];
