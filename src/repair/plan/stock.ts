import { tapTest } from '../../acceptance/index.js';
import { circumference } from '../../pipe/index.js';
import { exactly, line, roundedDown, roundedUp, torqued, weighed } from '../../quantity/index.js';
import { saysNothing } from '../case/says-nothing.js';
import type { MixDesign } from '../design/design-work.js';
import { laidLength } from '../wrap/wrap.js';
import type { PlanFacts } from './facts.js';
import type { StockItem } from './plan.js';
import { scaleFor } from './scale.js';
import { torqueTool } from './torque-tool.js';

/** What to bring that is used up: as much as the job uses, and whole packs to order. */
export function materialsFor(facts: PlanFacts): StockItem[] {
  const { wrap, case: repairCase, fillerMix, resinMix, seal } = facts;
  const { filler, resin, laminate } = repairCase;
  const length = wrap.form === 'tape' ? wrap.tapeLength : wrap.sheetLength;
  return [
    {
      name: `${laminate.name}, ${wrap.form}`,
      use: roundedUp(`${wrap.form} length`, 'length', length),
      order: exactly('rolls', 'count', wrap.rolls),
      note: line(
        'rolls of {0}, {1} wide; the order holds the waste',
        exactly('roll length', 'length', repairCase.wrap.rollLength),
        exactly('width', 'length', repairCase.wrap.width),
      ),
      hasBatch: true,
    },
    ...isolatingItems(facts),
    ...(resin === 'none' || resinMix === undefined ? [] : [mixed(resinMix, resin.kitMass)]),
    ...(filler === 'none' || fillerMix === undefined ? [] : [mixed(fillerMix, filler.kitMass)]),
    ...(seal === undefined ? [] : sealItems(facts)),
    { name: 'degreaser, clean lint-free cloths, abrasive' },
    { name: 'gloves, eye protection, masks' },
  ];
}

/** What keeps carbon off the steel lies under all of the wrap, and beyond both of its ends. */
function isolatingItems({ found, wrap, extent, case: { laminate } }: PlanFacts): StockItem[] {
  const { isolatingLayer } = laminate;
  if (saysNothing(isolatingLayer)) return [];
  return [
    {
      name: `isolating layer: ${isolatingLayer}`,
      note: line(
        'under the whole wrap and beyond both of its ends: more than {0} along the pipe, {1} round it',
        roundedUp('length under the wrap', 'length', laidLength(wrap, extent)),
        exactly('circumference', 'length', circumference({ outsideDiameter: found.outsideDiameter })),
      ),
    },
  ];
}

function mixed(mix: MixDesign, kitMass: number): StockItem {
  return {
    name: mix.material,
    use: exactly(mix.material, 'mass', mix.mass),
    order: exactly('kits', 'count', mix.kits),
    note: line('kits of {0}', exactly('kit', 'mass', kitMass)),
    hasBatch: true,
  };
}

function sealItems({ seal, case: { seal: asked } }: PlanFacts): StockItem[] {
  if (seal === undefined || asked === undefined) return [];
  return [
    {
      name: asked.putty.name,
      note: line('enough for a pad {0} across', roundedUp('pad', 'length', seal.padDiameter)),
      hasBatch: true,
    },
    {
      name: 'band',
      order: exactly('pieces', 'count', asked.band.count),
      note: line('{0} each', roundedUp('band length', 'length', seal.bandLength)),
    },
    {
      name: 'fastener',
      order: exactly('pieces', 'count', asked.band.count),
      note: line('thread {0}', exactly('thread', 'length', asked.fastener.threadDiameter)),
    },
    {
      name: 'backing sheet',
      order: exactly('pieces', 'count', 1),
      note: line(
        '{0} thick, over the whole pad, at most {1} corner to corner',
        exactly('sheet', 'length', asked.sheet.thickness),
        roundedDown('sheet across', 'length', asked.sheet.across ?? seal.padDiameter),
      ),
    },
  ];
}

/** What to bring that comes home again. */
export function toolsFor(facts: PlanFacts): StockItem[] {
  const { site, acceptance, seal, case: repairCase, fillerMix, resinMix } = facts;
  const mix = fillerMix ?? resinMix;
  const scale = mix === undefined ? undefined : scaleFor(mix, resinMix);
  const test = acceptance.pressureTest;
  return [
    { name: 'contact thermometer, air thermometer and hygrometer, checked' },
    {
      name: 'profile gauge or comparator',
      note: line('for {0} and more', roundedUp('profile', 'length', site.requiredProfile)),
    },
    { name: 'kit for soluble salts, clear tape for dust, comparison pictures' },
    ...(scale === undefined
      ? []
      : [
          {
            name: 'scale',
            note: line('it shows steps of {0} or finer', {
              ...weighed('step of the scale', scale, scale),
              toward: 'down',
            }),
          },
        ]),
    { name: 'pots, stirrers, spatulas, rollers, scissors, clock' },
    { name: 'measuring tape, marker, calliper, wall thickness gauge' },
    ...(seal?.torque === undefined
      ? []
      : [{ name: `${torqueTool(seal.torque)}, band tool`, note: line('set to {0}', torqued('torque', seal.torque)) }]),
    { name: `hardness tester${acceptance.hardness === undefined ? '' : `, ${acceptance.hardness.scale}`}` },
    { name: 'tap hammer', note: line('at most {0}', tapTest.hammer) },
    ...(test.medium === 'liquid' || test.medium === 'gas'
      ? [
          {
            name: 'pump, gauge, thermometer for the test',
            note: line('for {0}', exactly('test pressure', 'gauge pressure', test.pressure)),
          },
        ]
      : []),
    ...(repairCase.service.hazards.includes('flammable')
      ? [{ name: 'spark-free tools, gas tester, earthing leads' }]
      : []),
  ];
}
