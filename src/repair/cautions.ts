import type { RepairCase } from './case/case.js';

/** The standing cautions of the trade, and those that this case brings with it. */
export function cautionsFor(repairCase: RepairCase, throughWall: boolean): string[] {
  const { service, laminate, filler, line } = repairCase;
  const cautions = [
    'This design is to be checked by a competent person under the local code and the permit system of the site. It does not replace the standard, the qualification of the repair system or licensed practice.',
    'The pipe is thin: isolate and depressurise it before preparing the surface wherever that can be done. Blasting and grinding can break through the wall.',
    'Stored energy: keep people clear while a line under pressure is worked on and while the repair is tested; test with liquid, not gas.',
    'Epoxy resins and amine hardeners sensitise the skin for life: gloves, long sleeves and eye protection; no solvent on the skin. Dust of part-cured resin is the worst form.',
    'Dust, sparks and static: keep flammable atmospheres out, use spark-free tools where the area asks for them, and test the gas before any hot work or heater.',
    'Mixed resin heats itself: never leave a pot standing; spread it or split it. Confined spaces need ventilation and a gas test.',
  ];
  if (throughWall) {
    cautions.push(
      'A leak seal gives no axial strength: a thinned pipe has parted inside a leak-sealing device. Restrain the line unless its end load is shown to be carried.',
      'A wet or weeping surface defeats the bond: the laminate goes on a dry, prepared surface only.',
    );
  }
  if (throughWall && line.state !== 'empty, dry, isolated, vented') {
    cautions.push(
      'The case states pressure in a leaking line during the work: first choice is to isolate; work on a live leak needs a written procedure of the site.',
    );
  }
  if (service.hazards.includes('flammable'))
    cautions.push(
      'The contents are flammable: no hot work, no open heater, bonded and earthed tools, continuous gas test; purge with nitrogen or another inert gas, never with air.',
    );
  if (service.hazards.includes('toxic'))
    cautions.push('The contents are toxic: breathing protection and an escape plan before the line is touched.');
  if (service.hazards.includes('hot'))
    cautions.push(
      'The contents are hot: protect against scalding, and check that the steel is cold enough for the resin to be worked.',
    );
  if (service.phase !== 'liquid' || service.hazards.includes('asphyxiant')) {
    cautions.push(
      'The contents are or give off gas: a gas line stores far more energy than a liquid one, and the gas can displace the air in pits and rooms.',
    );
  }
  if (service.hazards.includes('corrosive')) {
    cautions.push(
      'The contents are corrosive: face shield, acid-proof gloves and a water supply at hand before the line is touched.',
    );
  }
  if (laminate.cure.mechanism === 'moisture' || (filler !== 'none' && filler.cure.mechanism === 'moisture')) {
    cautions.push(
      'Moisture-cured resins hold isocyanates, a leading cause of asthma at work: no skin contact, no breathing of vapour or dust; people already sensitised stay away.',
    );
  }
  if (service.safetyCritical)
    cautions.push(
      'The line is safety-critical: replace it first of all; repair it for a time if it cannot be replaced now; permanently only where replacement is not practical.',
    );
  return cautions;
}
