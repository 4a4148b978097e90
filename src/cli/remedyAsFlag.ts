/** What a remedy names as a function or an option of the library, and the flag that does it. */
const flags: Readonly<Record<string, string>> = {
  columns: '--column',
  reverseSign: '--repair reverse=column',
  rebuildTime: '--repair rate=1/s',
  restoreZero: '--repair zero',
  alignChannels: '--repair lag',
  joinJumps: '--repair jumps',
  joinSlips: '--repair slips',
  'repairs.slips': '--repair slips',
  loadingEnvelope: '--repair envelope',
};

/** A remedy, in any language, with flags in the place of names of the library, where there is one. */
export const remedyAsFlag = (remedy: string): string =>
  remedy.replace(/`([\w.]+)`/g, (whole, name: string) => (Object.hasOwn(flags, name) ? flags[name]! : whole));
