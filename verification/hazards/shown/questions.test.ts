import { describe } from 'vitest';
import { evenLoss, leak, loss, quietLoss, withPaths } from '../../../tests/faults/cases.js';
import { show } from './judged.js';

/** What is asked before anybody signs, and what the answers come to. */

describe('nobody was asked', () => {
  for (const field of [
    'service.surge',
    'service.cracking',
    'defect.nearestAttachment',
    'defect.neighbours',
    'loads.heldLine',
    'laminate.fibre',
    'laminate.transitionCuredAt',
  ])
    show(field, { from: quietLoss, with: { [field]: undefined }, verdict: 'needs input', asks: field });
  show('the coldest steel of a held line', {
    from: evenLoss,
    with: { 'loads.heldLine': { tieInTemperature: '25 degC' }, 'service.lowestTemperature': undefined },
    verdict: 'needs input',
    asks: 'service.lowestTemperature',
  });
  show('filler.greatestLift', {
    from: loss,
    with: { 'filler.greatestLift': undefined },
    verdict: 'needs input',
    asks: 'filler.greatestLift',
  });
  show('acceptance.pressureTest.lowestRating', {
    from: quietLoss,
    with: { 'acceptance.pressureTest.lowestRating': undefined },
    verdict: 'needs input',
    asks: 'acceptance.pressureTest.lowestRating',
  });
});

const sour = withPaths(quietLoss, {
  'service.contents': 'sour water',
  'service.hazards': ['flammable', 'toxic'],
  'service.cracking': {
    environment: 'sour',
    test: { method: 'wet MPI', result: 'no crack found', date: '2026-05-04' },
  },
});
const carbon = withPaths(quietLoss, {
  'laminate.fibre': 'carbon',
  'laminate.isolatingLayer': 'one ply of glass',
});

const beside = {
  cause: 'internal erosion',
  gapAlong: '60 mm',
  gapRound: '0 mm',
  axialLength: '40 mm',
  circumferentialWidth: '30 mm',
  remainingWall: '4.5 mm',
};

describe('an answer', () => {
  show('that no crack is to be feared in sour service', {
    from: sour,
    with: { 'service.cracking': 'none' },
    verdict: 'needs input',
    asks: 'service.cracking',
  });
  show('that names no test for cracks', {
    from: sour,
    with: { 'service.cracking.test': undefined },
    verdict: 'needs input',
    asks: 'service.cracking.test',
  });
  show('that calls gasoline no hazard', {
    from: withPaths(quietLoss, { 'service.contents': 'gasoline', 'service.hazards': ['flammable'] }),
    with: { 'service.hazards': [] },
    verdict: 'needs input',
    asks: 'service.hazards',
  });
  show('that calls sewage no hazard', {
    from: withPaths(quietLoss, { 'service.contents': 'raw sewage', 'service.hazards': ['toxic'] }),
    with: { 'service.hazards': [], 'service.hazardsStatedBy': 'process engineer, by the analysis' },
    verdict: 'needs input',
    asks: 'service.hazards',
  });
  show('that calls contents of 101 degC not hot', {
    from: withPaths(quietLoss, { 'service.designTemperature': '60 degC', 'laminate.glassTransition': '150 degC' }),
    with: { 'service.designTemperature': '101 degC' },
    verdict: 'needs input',
    asks: 'service.hazards',
  });
  show('that calls gasoline of 101 degC hot and nothing else', {
    from: withPaths(quietLoss, {
      'service.designTemperature': '101 degC',
      'laminate.glassTransition': '150 degC',
      'service.hazards': ['hot'],
    }),
    with: { 'service.contents': 'gasoline' },
    verdict: 'needs input',
    asks: 'service.hazards',
  });
  show('that says nothing of how cold liquefied gas gets', {
    from: withPaths(quietLoss, {
      'service.contents': 'LPG',
      'service.hazards': ['flammable'],
      'service.lowestTemperature': '0 degC',
    }),
    with: { 'service.lowestTemperature': undefined },
    verdict: 'needs input',
    asks: 'service.lowestTemperature',
  });
  show('that calls the pipe cast iron', {
    from: quietLoss,
    with: { 'pipe.material.name': 'cast iron' },
    verdict: 'not covered',
    says: /which is no steel/,
  });
  show('of a modulus that is that of cast iron', {
    from: withPaths(quietLoss, { 'pipe.material.modulus': '170 GPa' }),
    with: { 'pipe.material.modulus': '169 GPa' },
    verdict: 'not covered',
    limit: 170e9,
  });
  show('that looked for cracks with the eye', {
    from: sour,
    with: { 'service.cracking.test.method': 'visual, good light' },
    verdict: 'needs input',
    asks: 'service.cracking.test',
  });
  // Three months are 90 days.
  show('that was tested for cracks long before the survey', {
    from: withPaths(sour, { date: '2026-08-02', 'service.cracking.test.date': '2026-05-04' }),
    with: { 'service.cracking.test.date': '2026-05-03' },
    verdict: 'needs input',
    asks: 'service.cracking.test',
  });
  show('that was tested for cracks before a survey on no day', {
    from: sour,
    with: { date: undefined },
    verdict: 'needs input',
    asks: 'service.cracking.test',
  });
  show('whose title calls the line another one', {
    from: withPaths(quietLoss, { 'service.safetyCritical': true, title: 'Leak of the firewater main' }),
    with: { 'service.safetyCritical': false },
    verdict: 'designed',
    says: /title or the note says "firewater/,
  });
  show('that names no contents', {
    from: quietLoss,
    with: { 'service.contents': 'TBC' },
    verdict: 'needs input',
    asks: 'service.contents',
  });
  show('that finds no hazard in contents that nobody looked at', {
    from: quietLoss,
    with: { 'service.contents': 'stream 4' },
    verdict: 'needs input',
    asks: 'service.hazards',
  });
  show('that says nothing of contents that feed fire', {
    from: withPaths(quietLoss, { 'service.hazards': ['corrosive'] }),
    with: { 'service.contents': 'hydrogen peroxide' },
    verdict: 'needs input',
    asks: 'service.hazardsStatedBy',
  });
  show('that calls air a liquid', {
    from: quietLoss,
    with: { 'service.contents': 'compressed air' },
    verdict: 'needs input',
    asks: 'service.phase',
  });
  show('that calls a line under vacuum pressed by nothing', {
    from: withPaths(quietLoss, { 'service.phase': 'gas', 'service.hazards': ['hot', 'asphyxiant'] }),
    with: { 'service.contents': 'steam under vacuum' },
    verdict: 'needs input',
    asks: 'loads.externalPressure',
  });
  show('that calls a line under vacuum pressed by 0 bar', {
    from: withPaths(quietLoss, {
      'service.phase': 'gas',
      'service.hazards': ['hot', 'asphyxiant'],
      'loads.externalPressure': '0 bar',
    }),
    with: { 'service.contents': 'steam under vacuum' },
    verdict: 'needs input',
    asks: 'loads.externalPressure',
  });
  show('that names no material of the pipe', {
    from: quietLoss,
    with: { 'pipe.material': { name: 'unknown', yieldStrength: '241 MPa' } },
    verdict: 'needs input',
    asks: 'pipe.material.name',
  });
  show('that seals a leak it does not have', {
    from: quietLoss,
    with: { seal: leak['seal'] },
    verdict: 'needs input',
    asks: 'seal',
  });
  show('that calls firewater not safety-critical', {
    from: quietLoss,
    with: { 'service.contents': 'firewater' },
    verdict: 'needs input',
    asks: 'service.safetyCritical',
  });
  show('that lays carbon on bare steel', {
    from: carbon,
    with: { 'laminate.isolatingLayer': 'none' },
    verdict: 'needs input',
    asks: 'laminate.isolatingLayer',
  });
  show('that lays carbon over a layer that the crew has to know of', {
    from: quietLoss,
    with: { 'laminate.fibre': 'carbon', 'laminate.isolatingLayer': 'one ply of glass' },
    verdict: 'designed',
    says: /first lay one ply of glass/,
    step: 'wrap',
  });
  show('that calls a laminate glass that is stiffer than glass makes one', {
    from: withPaths(quietLoss, { 'laminate.hoopModulus': '45 GPa', 'laminate.axialModulus': '30 GPa' }),
    with: { 'laminate.hoopModulus': '46 GPa' },
    verdict: 'needs input',
    asks: 'laminate.isolatingLayer',
  });
  show('of a surge above the design pressure', {
    from: withPaths(quietLoss, { 'acceptance.pressureTest.lowestRating': '200 bar' }),
    with: { 'service.surge': '60 bar' },
    verdict: 'designed',
    says: /all designed for the surge/,
  });
  show('of a sample that was cured warmer than the site is', {
    from: quietLoss,
    with: { 'laminate.transitionCuredAt': '80 degC' },
    verdict: 'needs input',
    asks: 'laminate.transitionCuredAt',
  });
  show('of a weld that the wrap would run over', {
    from: quietLoss,
    with: { 'defect.nearestAttachment': '10 mm' },
    verdict: 'not covered',
    says: /lies inside the laid length/,
  });
  show('of a neighbouring loss that lies apart and under the laminate', {
    from: quietLoss,
    with: { 'defect.neighbours': [{ ...beside, gapRound: '300 mm' }] },
    verdict: 'not covered',
    says: /where the laminate has to lie on sound metal/,
  });
  show('of a neighbouring loss that lies clear of the laminate', {
    from: quietLoss,
    with: { 'defect.neighbours': [{ ...beside, gapAlong: '2 m' }] },
    verdict: 'designed',
    says: /needs a case of its own/,
    step: 'return',
  });
  show('of a neighbouring loss that does not bear the design pressure', {
    from: quietLoss,
    with: { 'defect.neighbours': [{ ...beside, gapAlong: '2 m', axialLength: '400 mm', remainingWall: '1.4 mm' }] },
    verdict: 'not repairable',
    says: /does not bear the design pressure until the end of its life/,
  });
  show('of a neighbouring loss that grows at no rate', {
    from: quietLoss,
    with: {
      'defect.cause': 'external corrosion',
      'defect.growth': 'none',
      'defect.neighbours': [{ ...beside, gapAlong: '2 m' }],
    },
    verdict: 'needs input',
    asks: 'defect.growth',
  });
  show('of a neighbouring loss that somebody made with a tool', {
    from: loss,
    with: {
      'defect.growth': 'none',
      'defect.neighbours': [{ ...beside, cause: 'mechanical damage', gapAlong: '2 m' }],
    },
    verdict: 'designed',
    says: /needs a case of its own/,
    step: 'return',
  });
  show('of a neighbouring loss that acts with the defect', {
    from: quietLoss,
    with: { 'defect.neighbours': [beside] },
    verdict: 'designed',
    says: /act as one with the defect/,
  });
  show('of neighbouring losses that act as one with each other', {
    from: quietLoss,
    with: {
      'defect.neighbours': [
        { ...beside, gapAlong: '2 m' },
        { ...beside, gapAlong: '2.05 m' },
      ],
    },
    verdict: 'designed',
    says: /act as one with each other/,
  });
  show('of a neighbouring loss that folds under a vacuum', {
    from: quietLoss,
    with: {
      'loads.externalPressure': '1 bar',
      'defect.neighbours': [{ ...beside, gapAlong: '2 m', remainingWall: '1.4 mm' }],
    },
    verdict: 'not repairable',
    says: /does not bear what presses from outside/,
  });
  show('of filler that may not lie so deep at once', {
    from: loss,
    with: { 'filler.greatestLift': '10 mm' },
    verdict: 'not covered',
    limit: 0.01,
  });
});

describe('a buried line', () => {
  const soil = { cover: '1 m', density: '2000 kg/m3', waterAbove: 'none', traffic: 'none' };
  const judged = { underWrap: 'potentials every year; corrosion engineer, report 7' };
  const buried = withPaths(quietLoss, { 'loads.soil': soil, 'pipe.cathodicProtection': judged });
  show('bends at a neighbouring loss', {
    from: buried,
    with: { 'defect.neighbours': [{ ...beside, gapAlong: '2 m', remainingWall: '3 mm' }] },
    verdict: 'not covered',
    says: /would yield at its least wall where soil and traffic bend the pipe/,
  });
  show('has cathodic protection or not', {
    from: buried,
    with: { 'pipe.cathodicProtection': undefined },
    verdict: 'needs input',
    asks: 'pipe.cathodicProtection',
  });
  show('knows what the wrap does to it', {
    from: buried,
    with: { 'pipe.cathodicProtection.underWrap': 'TBC' },
    verdict: 'needs input',
    asks: 'pipe.cathodicProtection.underWrap',
  });
  show('tells the crew of its trench', {
    from: quietLoss,
    with: { 'loads.soil': soil, 'pipe.cathodicProtection': judged },
    verdict: 'designed',
    says: /its sides are held/,
    step: 'permit',
  });
  show('tells its owner', {
    from: withPaths(buried, { 'pipe.cathodicProtection': 'none' }),
    with: { 'pipe.cathodicProtection': judged },
    verdict: 'designed',
    says: /potentials every year/,
    step: 'return',
  });
});
