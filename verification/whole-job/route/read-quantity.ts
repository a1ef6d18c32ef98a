/** What one of a unit is in SI. Written out again, for the units that a drawn case uses. */
const SCALE: Readonly<Record<string, number>> = {
  m: 1,
  mm: 1e-3,
  um: 1e-6,
  in: 0.0254,
  Pa: 1,
  bar: 1e5,
  kPa: 1e3,
  MPa: 1e6,
  GPa: 1e9,
  psi: 4.4482216152605 / 0.0254 ** 2,
  N: 1,
  kN: 1e3,
  s: 1,
  min: 60,
  h: 3600,
  year: 365.25 * 86_400,
  'mm/year': 1e-3 / (365.25 * 86_400),
  '%': 0.01,
  K: 1,
  '1/K': 1,
  'J/m2': 1,
  'kJ/mol': 1e3,
  kg: 1,
  'kg/min': 1 / 60,
  'g/m2': 1e-3,
  'g/cm3': 1e3,
  'g/mol': 1e-3,
  'm/min': 1 / 60,
  'kN m': 1e3,
  'N m': 1,
  'kg/m3': 1,
};

/** Reads `8.18 mm` as a number in SI; a temperature in `degC` as kelvin. */
export function readQuantity(text: string): number {
  const gap = text.indexOf(' ');
  const number = Number(gap < 0 ? text : text.slice(0, gap));
  const unit = gap < 0 ? '' : text.slice(gap + 1);
  if (Number.isNaN(number)) throw new Error(`"${text}" does not begin with a number`);
  if (unit === '') return number;
  if (unit === 'degC') return number + 273.15;
  const scale = SCALE[unit];
  if (scale === undefined) throw new Error(`"${text}" has the unit "${unit}", which the second route does not read`);
  return number * scale;
}
