/*
 * A case in the fragment of a link, which no browser sends to a server. It is text from anywhere: its size is bounded
 * before and after it is unpacked, its check sum shows a letter lost on the way, and the text then goes through the JSON
 * door as any other.
 */

/** What a link may hold: a whole case, or the numbers of one formula. */
export type Linked = 'case' | 'formula';

function prefixOf(linked: Linked): string {
  return `#${linked}=1.`;
}

/** Characters that a link may have, and that its case may have as text. */
const LONGEST_LINK = 100_000;
const LONGEST_CASE = 400_000;

export type LinkReading =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly problem: string };

/** What a fragment says that it holds; nothing where it is no link of this page. */
export function linkedBy(fragment: string): Linked | undefined {
  return fragment.startsWith('#case=') ? 'case' : fragment.startsWith('#formula=') ? 'formula' : undefined;
}

/** The fragment that holds a text; nothing where it would be too long for a link. */
export async function linkOf(linked: Linked, text: string): Promise<string | undefined> {
  if (text.length > LONGEST_CASE) return undefined;
  const packed = await drained(new Blob([text]).stream().pipeThrough(new CompressionStream('gzip')), LONGEST_LINK);
  if (packed === undefined) return undefined;
  const fragment = `${prefixOf(linked)}${base64UrlOf(packed)}`;
  return fragment.length > LONGEST_LINK ? undefined : fragment;
}

/** The text that a fragment holds. It takes time in proportion to its length, and never more room than a case may have. */
export async function readLink(linked: Linked, fragment: string): Promise<LinkReading> {
  const prefix = prefixOf(linked);
  if (!fragment.startsWith(prefix)) return refused('it was not made by this version of the page');
  if (fragment.length > LONGEST_LINK) return refused(`it is longer than ${LONGEST_LINK} characters`);
  const packed = bytesOf(fragment.slice(prefix.length));
  if (packed === undefined) return refused('it holds characters that no such link has');
  try {
    const unpacked = await drained(
      new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip')),
      LONGEST_CASE,
    );
    if (unpacked === undefined) return refused(`it holds more than ${LONGEST_CASE} bytes`);
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(unpacked) };
  } catch {
    return refused('it is cut short, or a letter of it was changed on the way');
  }
}

function refused(why: string): LinkReading {
  return {
    ok: false,
    problem: `What this link holds cannot be read: ${why}. Ask for the link again, or for the case as a file.`,
  };
}

/** What a stream holds, or nothing as soon as it holds more than it may. */
async function drained(stream: ReadableStream<Uint8Array>, most: number): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  const reader = stream.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    size += value.length;
    if (size > most) {
      await reader.cancel();
      return undefined;
    }
    chunks.push(value);
  }
  const whole = new Uint8Array(size);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

function base64UrlOf(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> | undefined {
  if (!/^[\w-]*$/u.test(text) || text.length % 4 === 1) return undefined;
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (letter) => letter.charCodeAt(0));
}
