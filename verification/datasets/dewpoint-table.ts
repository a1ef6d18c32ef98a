import { readFileSync } from 'node:fs';

/** A row of the published table of dew points, as printed. */
export interface DewPointRow {
  readonly airCelsius: number;
  readonly humidityPercent: number;
  readonly printedCelsius: number;
  /** `frost`: below 0 degC, where the table gives the frost point; `misprint` and `suspect` are not judged. */
  readonly status: 'ok' | 'frost' | 'misprint' | 'suspect';
}

/** The table of dew points (source key `building-physics-dew-table`). */
export function readDewPointTable(): readonly DewPointRow[] {
  const text = readFileSync(new URL('./dewpoint-table.csv', import.meta.url), 'utf8');
  return text
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => {
      const [air, humidity, printed, status] = line.split(',');
      return {
        airCelsius: Number(air),
        humidityPercent: Number(humidity),
        printedCelsius: Number(printed),
        status: status as DewPointRow['status'],
      };
    });
}
