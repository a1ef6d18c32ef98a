import { sha256 } from './sha-256.js';

/**
 * The content security policy of a page as its head says it: only this script runs, or none; nothing is fetched, nothing is
 * sent. What a text of the case might smuggle in has no effect then.
 */
export function pagePolicy(script?: string): string {
  const rules = [
    "default-src 'none'",
    ...(script === undefined ? [] : [`script-src 'sha256-${sha256(script)}'`]),
    "style-src 'unsafe-inline'",
    'img-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ];
  return `<meta http-equiv="Content-Security-Policy" content="${rules.join('; ')}">`;
}
