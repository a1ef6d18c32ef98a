import type { Service } from '../case/case.js';

type Hazard = Service['hazards'][number];

/**
 * Words of the trade for contents, and what such contents plainly can do to people. Common knowledge, and not complete.
 *
 * The patterns of this file are asked of names as `spelt` leaves them, in which no letter but a Latin one folds to a Latin one:
 * without the flag `u` the same is found, and the patterns are read in a third of the time, which each start pays.
 */
export const contentsWords: readonly (readonly [words: RegExp, hazards: readonly Hazard[]])[] = [
  [
    /\b(?:petrol(?:eum|eo)?|gasolin[ea]|benzine?|naphtha|keros[ei]ne|jet a-?1|diesel|crude|oil|oily|bunker|fuel)\b/i,
    ['flammable'],
  ],
  [/\b(?:hydrocarbons?|slops?|lpg|lng|ngl|syngas|biogas|erdgas|erdol|mtbe)\b/i, ['flammable']],
  // What runs back from steam and coolers is water.
  [/(?<!\b(?:steam|boiler|cooler) )\bcondensate\b(?! (?:of steam|return))/i, ['flammable']],
  [/(?<!\b(?:inert|flue|exhaust) )\bgas\b/i, ['flammable']],
  [/\b(?:methane|ethane|propane|butane|pentane|hexane|ethylene|propylene|acetylene)\b/i, ['flammable']],
  [/\b(?:hydrogen\b(?! (?:peroxide|fluoride|chloride))|wasserstoff\b|hidrogeno\b)/i, ['flammable']],
  [/\b(?:ethanol|acetone|toluene|xylenes?|styrene|solvents?)\b/i, ['flammable']],
  [/\b(?:methanol|benzene|btx|vinyl chloride|mercaptans?|carbon monoxide|sour)\b/i, ['flammable', 'toxic']],
  [/\bh2s\b|\bhydrogen sul(?:ph|f)ide\b/i, ['flammable', 'toxic']],
  [/\bhydrazine\b/i, ['flammable', 'toxic', 'corrosive']],
  [
    /\b(?:ammonia|ammoniak|amoniaco|r-?717|chlorine|chlor|bromine|hydrogen (?:fluoride|chloride))\b/i,
    ['toxic', 'corrosive'],
  ],
  [/\b(?:formaldehyde|formalin)\b/i, ['toxic', 'corrosive']],
  [/\b(?:phosgene|so2|sul(?:ph|f)ur dioxide|cyanides?|\w*isocyanates?)\b/i, ['toxic']],
  [/\b\w*(?:acid|acido|saure|caustic|lye|lauge|bleach|hypochlorite)\b/i, ['corrosive']],
  [/\b(?:nitric|sul(?:ph|f)uric|hydrochloric)\b|\b(?:sodium|potassium|ammonium) hydroxide\b/i, ['corrosive']],
  // What rots gives off hydrogen sulphide and methane, and carries germs, for which the list has no word.
  [
    /\b(?:sewage|sewer(?:age)?|septic|septage|faecal|fecal|manure|\w*sludges?|leachate|digester|digestate|black ?water|foul water|abwasser|\w*schlamm|gulle|aguas residuales|eaux usees)\b|(?<!\btreated )\bwaste[ -]?water\b/i,
    ['toxic'],
  ],
  [/\b(?:digester|digestate|leachate|manure|silane|turpentine|thinners?|paint|varnish|lacquer)\b/i, ['flammable']],
  [
    /\b(?:(?:iso|neo|cyclo)(?:butane|pentane|hexane|propane|octane)|heptane|octane|nonane|decane|(?:iso)?(?:butene|butylene)s?|butadiene|isoprene|propene|ethene|cumene)\b/i,
    ['flammable'],
  ],
  [/\b(?:dme|mek|ipa|(?:iso)?propanol|isopropyl alcohol|butanol|alcohols?|ketones?|ethers?)\b/i, ['flammable']],
  [
    /\b(?:(?:m?ethyl|butyl|propyl) acetate|(?:white|mineral|petroleum) spirits?|light ends|reformate|raffinate)\b/i,
    ['flammable'],
  ],
  [
    /\b(?:pygas|pyrolysis (?:gas|gasoline|oil)|benzol|btex|carbon disul(?:ph|f)ide|acrylonitrile|acetonitrile|acrolein|\w*aldehydes?|(?:eth|prop)ylene oxide|vcm|vinyl acetate|hydrogen cyanide|phosphine|arsine|creosote|coal tar|aniline|pyridine|naphthalene|sws)\b/i,
    ['flammable', 'toxic'],
  ],
  [/\bepichlorohydrin\b|\b(?:mono|di|tri)?m?ethylamine\b|\b\w*chlorosilane\b/i, ['flammable', 'toxic', 'corrosive']],
  [/\b(?:tdi|mdi|hdi|chloroform|carbon tetrachloride|dichloromethane|(?:tri|per)chloroethylene|edc)\b/i, ['toxic']],
  [/\b(?:mercury|arsenic\w*|\w*chromates?|pcbs?|pesticides?|herbicides?|biphenyls?)\b/i, ['toxic']],
  [
    /\b(?:oleum|sul(?:ph|f)ur trioxide|fluorine|chromic|phenols?|cresols?|(?:plating|pickling|etching) (?:bath|liquor|solution)|black liquor|nitrogen dioxide|titanium tetrachloride|thionyl chloride)\b/i,
    ['toxic', 'corrosive'],
  ],
  [
    /\b(?:(?:white|green) liquor|acetic|phosphoric|formic|ferric chloride|anhydride|electrolyte|alkalis?|milk of lime|lime (?:slurry|milk)|quicklime)\b/i,
    ['corrosive'],
  ],
  // What takes up hydrogen sulphide, and a header that takes what anything lets off.
  [/\b(?:m?dea|amines?)\b/i, ['toxic', 'corrosive']],
  [/\bflare\b/i, ['flammable', 'toxic']],
  [/\bblow[ -]?down\b/i, ['hot']],
  [/\b(?:bitumen|asphalt)\b/i, ['hot']],
  [/\b(?:nitrous oxide|refrigerants?)\b/i, ['asphyxiant']],
  [/\bsteam\b|\b(?:hot|boiling) (?:water|oil|condensate)\b|\bthermal oil\b/i, ['hot']],
  // Above 60 degC or 140 degF, as it stands in a name.
  [/(?<![\d.])(?:6[1-9]|[7-9]\d|[1-9]\d\d)(?:[.,]\d+)? ?(?:°|º|deg\.? ?)?C(?![-\w])/i, ['hot']],
  [/(?<![\d.])(?:14[1-9]|1[5-9]\d|[2-9]\d\d)(?:[.,]\d+)? ?(?:°|º|deg\.? ?)?F(?![-\w])/i, ['hot']],
  [/\bmolten\b/i, ['hot']],
  [/\bmolten sul(?:ph|f)ur\b/i, ['flammable', 'toxic']],
  [/\b(?:nitrogen|argon|helium|carbon dioxide)\b|\b(?:inert|flue|exhaust) gas\b/i, ['asphyxiant']],
  // Chemical formulas, as they are written.
  [/\b(?:H2|CH4|C[23]H[468])\b/u, ['flammable']],
  [/\b(?:CO|CS2|HCN)\b/u, ['flammable', 'toxic']],
  [/\b(?:NH3|Cl2|F2|HF|HCl|HBr|SO3|NO2)\b/u, ['toxic', 'corrosive']],
  [/\b(?:H2SO4|HNO3|H3PO4|FeCl3|NaOH|KOH|NaOCl)\b/u, ['corrosive']],
  [/\b(?:N2|N2O|CO2)\b/u, ['asphyxiant']],
];

/** Words for contents that crack steel. */
export const SOUR_WORDS = /\b(?:h2s|sour|sws)\b|\bhydrogen sul(?:ph|f)ide\b/i;

/** Contents that feed a fire, resin and all: the list of hazards has no word for it. */
export const OXIDISING_WORDS =
  /(?<!\bdissolved )\boxygen\b(?![ -](?:free|scaveng))|\b(?:lox|ozone|fluorine|oleum|chromic|\w*peroxide|\w*chlorates?|permanganate|nitrous oxide|nitric acid)\b|\bO2\b/i;

/** Names of lines that lives hang on. */
export const SAFETY_WORDS =
  /\bfire[ -]?(?:water|fighting|main|ring)|\bdeluge\b|\bsprinkler\w*|\bhydrants?\b|\bfoam\b|\b(?:wet|dry) risers?\b|\b(?:safety|emergency) showers?\b|\beye[ -]?wash\b|\bemergency\b|\bflare\b|\brelief\b|\bloschwasser\w*|\bincendi\w*|\bantincendio\b/i;

/** A line that is sucked empty; what comes from the bottom of a vacuum column is called after it. */
export const VACUUM_WORDS =
  /\b(?:vacuum|vakuum|vacio)(?! (?:residues?|resid|bottoms|gas ?oil|distillates?)\b)|\b(?:sub|below)[ -]?atmospheric\b|\b(?:negative|below) pressure\b|\bevacuat\w*|\bsuction\b|\bs[iy]phon\b|\bbarometric\b|\bunterdruck\b|\bsous vide\b|\bsottovuoto\b/i;

/** Gas, or what gives off gas as it is. */
export const GAS_WORDS =
  /\b(?:air(?![ -](?:condition|cool|free|handling))|vapou?rs?|biogas|syngas|steam|multi-?phase|(?:two|2)-?phase|methane|nitrogen|argon|helium|carbon dioxide|carbon monoxide)\b|\bgas(?:es)?\b(?![ -](?:oil|condensate|free))|(?<!\bdissolved )\boxygen\b(?![ -](?:free|scaveng))|\bhydrogen\b(?! (?:peroxide|fluoride|chloride|sul))/i;

/** A gas that was made liquid, and what runs back from steam. */
export const LIQUEFIED_WORDS =
  /\bliqu(?:id|efied|ified) (?:(?:natural|petroleum) gas|nitrogen|oxygen|argon|helium|hydrogen|methane|carbon dioxide)\b|\bsteam condensate\b|\bcondensate of steam\b/gi;

/** Water and air as plants have them, with nothing else named. All other contents are asked for: no list of hazards is complete. */
export const PLAINLY_HARMLESS = new RegExp(
  `^(?:(?:${[
    ...[
      'raw',
      'treated',
      'untreated',
      'clean',
      'filtered',
      'fresh',
      'cold',
      'chilled',
      'cooling',
      'process',
      'service',
    ],
    ...['utility', 'plant', 'potable', 'drinking', 'domestic', 'town', 'tap', 'mains', 'city', 'river', 'lake', 'well'],
    ...['ground', 'rain', 'sea', 'brackish', 'demineralised', 'demineralized', 'deionised', 'deionized', 'distilled'],
    ...['softened', 'soft', 'fire', 'firefighting', 'sprinkler', 'deluge', 'irrigation', 'make up', 'recirculated'],
  ].join(
    '|',
  )}) ?)*water(?: (?:main|ring|ring main|header|supply|return))?$|^(?:(?:compressed|instrument|plant|service) )?air$`,
  'i',
);

/** Contents that boil when their pressure falls, and get as cold as they boil. */
export const BOILING_WORDS =
  /\b(?:lpg|lng|ngl|propane|(?:iso)?butane|(?:iso)?(?:butene|butylene)s?|butadiene|propene|dme|dimethyl ether|light ends|nitrous oxide|ethane|ethylene|propylene|ammonia|ammoniak|amoniaco|chlorine|vinyl chloride|carbon dioxide|liqu[ei]fied|refrigerants?|r-?\d{2,4}[a-z]?)\b|\bNH3\b|\bCO2\b/i;

/** Methods that find cracks in steel, by the words that name them. */
export const CRACK_METHODS =
  /magnet|\bm(?:pi|t)\b|\bpt\b|penetra|eindring|\bdye\b|eddy|wirbelstrom|\bacfm\b|ultras|\btofd\b|\bpaut\b|\bemat\b|phased array|shear wave/i;
