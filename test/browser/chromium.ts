import { existsSync } from 'node:fs';
import { chromium as engine, type Browser } from 'playwright-core';

/** Where a Chromium is: the variable CHROMIUM, or where Debian's package puts it; absent on a machine without one. */
export const chromium = [process.env['CHROMIUM'], '/usr/bin/chromium'].find((path) => path !== undefined && existsSync(path));

/** A browser that asks nobody outside for anything; the caller closes it. */
export function launch(): Promise<Browser> {
  if (chromium === undefined) throw new Error('no Chromium on this machine');
  return engine.launch({
    executablePath: chromium,
    headless: true,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
