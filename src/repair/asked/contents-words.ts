import type { Service } from '../case/case.js';

type Hazard = Service['hazards'][number];

/** Words of the trade for contents, and what such contents plainly can do to people. Common knowledge, and not complete. */
export const contentsWords: readonly (readonly [words: RegExp, hazards: readonly Hazard[]])[] = [
  [/\b(?:petrol|gasoline|benzine|naphtha|keros[ei]ne|jet a-?1|diesel|crude|oil|bunker|fuel)\b/iu, ['flammable']],
  [/\b(?:hydrocarbons?|slops?|lpg|lng|ngl|syngas)\b/iu, ['flammable']],
  // What runs back from steam and coolers is water.
  [/(?<!\b(?:steam|boiler|cooler) )\bcondensate\b(?! (?:of steam|return))/iu, ['flammable']],
  [/(?<!\b(?:inert|flue|exhaust) )\bgas\b/iu, ['flammable']],
  [/\b(?:methane|ethane|propane|butane|pentane|hexane|ethylene|propylene|acetylene)\b/iu, ['flammable']],
  [/\bhydrogen\b(?! (?:peroxide|fluoride|chloride))/iu, ['flammable']],
  [/\b(?:ethanol|acetone|toluene|xylenes?|styrene|solvents?)\b/iu, ['flammable']],
  [/\b(?:methanol|benzene|vinyl chloride|mercaptans?|carbon monoxide|sour)\b/iu, ['flammable', 'toxic']],
  [/\bh2s\b|\bhydrogen sul(?:ph|f)ide\b/iu, ['flammable', 'toxic']],
  [/\b(?:ammonia|chlorine|bromine|hydrogen (?:fluoride|chloride))\b/iu, ['toxic', 'corrosive']],
  [/\b(?:phosgene|so2|sul(?:ph|f)ur dioxide|hydrogen cyanide)\b/iu, ['toxic']],
  [/\b\w*(?:acid|caustic|lye|bleach|hypochlorite)\b|\b(?:sodium|potassium) hydroxide\b/iu, ['corrosive']],
  [/\bsteam\b|\b(?:hot|boiling) (?:water|oil|condensate)\b|\bthermal oil\b/iu, ['hot']],
  [/\b(?:nitrogen|argon|helium|carbon dioxide)\b|\b(?:inert|flue|exhaust) gas\b/iu, ['asphyxiant']],
  // Chemical formulas, as they are written.
  [/\b(?:H2|CH4|C[23]H[468])\b/u, ['flammable']],
  [/\b(?:NH3|Cl2|HF|HCl)\b/u, ['toxic', 'corrosive']],
  [/\b(?:H2SO4|HNO3|NaOH|KOH)\b/u, ['corrosive']],
  [/\b(?:N2|CO2)\b/u, ['asphyxiant']],
];

/** Words for contents that crack steel. */
export const SOUR_WORDS = /\b(?:h2s|sour)\b|\bhydrogen sul(?:ph|f)ide\b/iu;
