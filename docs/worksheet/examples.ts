import buriedLineBending from '../examples/buried-line-bending.json' with { type: 'json' };
import condenserLegSlot from '../examples/condenser-leg-slot.json' with { type: 'json' };
import coolingWaterLeak from '../examples/cooling-water-leak.json' with { type: 'json' };
import erodedBend from '../examples/eroded-bend.json' with { type: 'json' };
import hydrocarbonLineCorrosion from '../examples/hydrocarbon-line-corrosion.json' with { type: 'json' };
import sourGasCrack from '../examples/sour-gas-crack.json' with { type: 'json' };
import vacuumLine from '../examples/vacuum-line.json' with { type: 'json' };

/** The example cases that a reader may start from: invented plants, lines and materials. */
export const examples: readonly { readonly title: string }[] = [
  coolingWaterLeak,
  buriedLineBending,
  condenserLegSlot,
  erodedBend,
  hydrocarbonLineCorrosion,
  sourGasCrack,
  vacuumLine,
];
