import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome'];

/** Nothing of its own on the network, and no difference between machines with and without a graphics card. */
const FLAGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** The first browser on a search path. @throws Error that says how to get one */
export function findChromium(searchPath = process.env['PATH'] ?? ''): string {
  const folders = searchPath.split(delimiter).filter((folder) => folder !== '');
  const found = NAMES.flatMap((name) => folders.map((folder) => join(folder, name))).find(isExecutable);
  if (found !== undefined) return found;
  throw new Error(
    `The browser tests need one of ${NAMES.join(', ')} on the PATH, and none was found; on Debian: apt-get install chromium`,
  );
}

/** Starts the browser of this machine with an empty profile; a first start that fails is tried once more. */
export async function launchChromium(): Promise<Browser> {
  const options = { executablePath: findChromium(), args: FLAGS, chromiumSandbox: !isRoot() };
  return chromium.launch(options).catch(() => chromium.launch(options));
}

/** The sandbox of the browser refuses to run as root, which is who runs in a container. */
function isRoot(): boolean {
  return process.getuid?.() === 0;
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
