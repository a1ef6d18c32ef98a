import { writeFileSync } from 'node:fs';
import { hazardPage } from './page.js';

/** Writes docs/hazards.md from the hazard log: `npm run hazards`. */
writeFileSync(new URL('../../docs/hazards.md', import.meta.url), hazardPage());
