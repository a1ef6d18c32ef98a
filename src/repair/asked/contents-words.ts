import type { Service } from '../case/case.js';

type Hazard = Service['hazards'][number];

/** Words of the trade for contents, and what such contents plainly can do to people. Common knowledge, and not complete. */
export const contentsWords: readonly (readonly [words: RegExp, hazards: readonly Hazard[]])[] = [
  [/\b(?:petrol|gasoline|naphtha|kerosene?|diesel|crude|oil|fuel|lpg|lng|ngl)\b/iu, ['flammable']],
  [/(?<!\b(?:steam|boiler|cooler) )\bcondensate\b(?! (?:of steam|return))/iu, ['flammable']],
  [/(?<!\b(?:inert|flue|exhaust) )\bgas\b/iu, ['flammable']],
  [/\b(?:methane|ethane|propane|butane|pentane|hexane|ethylene|propylene|acetylene|syngas)\b/iu, ['flammable']],
  [/\bhydrogen\b(?! (?:peroxide|fluoride|chloride))/iu, ['flammable']],
  [/\b(?:ethanol|acetone|toluene|xylenes?|solvents?|glycol ether)\b/iu, ['flammable']],
  [/\b(?:methanol|benzene|carbon monoxide|h2s|sour)\b|\bhydrogen sul(?:ph|f)ide\b/iu, ['flammable', 'toxic']],
  [/\bammonia\b/iu, ['toxic', 'corrosive']],
  [/\b(?:chlorine|bromine|hydrogen fluoride)\b/iu, ['toxic', 'corrosive']],
  [/\b(?:phosgene|so2|sul(?:ph|f)ur dioxide|hydrogen cyanide)\b/iu, ['toxic']],
  [/\b\w*(?:acid|caustic|lye|bleach|hypochlorite)\b|\b(?:sodium|potassium) hydroxide\b/iu, ['corrosive']],
  [/\bsteam\b|\b(?:hot|boiling) (?:water|oil)\b|\bthermal oil\b/iu, ['hot']],
  [/\b(?:nitrogen|argon|helium|carbon dioxide|co2)\b|\b(?:inert|flue|exhaust) gas\b/iu, ['asphyxiant']],
];

/** Words for contents that crack steel. */
export const SOUR_WORDS = /\b(?:h2s|sour)\b|\bhydrogen sul(?:ph|f)ide\b/iu;
