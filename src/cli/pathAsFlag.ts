/** Fields of the library that the flag of another name sets; what a number in brackets counts is not said. */
const others: readonly (readonly [RegExp, string])[] = [
  [/^options\.columns\.(\w+)$/, '--column $1='],
  [/^options\.units\.(\w+)$/, '--unit $1='],
  [/^options\.uncertainty\.(.+?)(?:\.uncertainty)?$/, '--uncertainty $1'],
  [/^options\.repairs\.(\w+)$/, '--repair $1'],
  [/^options\.frameCompliance\.(force|travel)$/, '--frame-table'],
  [/^options\.modulus\.window\.startShare$/, '--window-start'],
  [/^options\.modulus\.window\.spanShare$/, '--window-span'],
  [/^options\.modulus\.window\b.*/, '--modulus-window'],
  [/^options\.test\.forceCalibration\.date$/, '--force-verified'],
  [/^options\.test\.channelCalibration\.date$/, '--calibration-date'],
  [/^pairs\.(indicated|reference)$/, '--calibration'],
  [/^options\.test\.forceCalibration\.range$/, '--force-range'],
  [/^testPiece\.afterFracture\.diameters$/, '--final-diameter'],
  [/^testPiece\.afterFracture\.subdivision\b.*$/, '--subdivision'],
  [/^testPiece\.afterFracture\.(gaugeLength|area|width|thickness)$/, '--final-$1'],
  [/^piece\.afterTest\.height$/, '--final-height'],
  [/^(?:readings\.|options\.)?ballDiameter$/, '--ball'],
  [/^(?:options\.)?dieDiameter$/, '--die'],
  [/^readings\.indentations\.diameters$/, '--indentation'],
  [/^options\.length$/, '--extensometer-length'],
  [/^extensometer\.(\w+)$/, '--extensometer-$1'],
  [/^frame\.compliance$/, '--frame-compliance'],
  [/^frame\.drive\.volumePerStroke$/, '--stroke-volume'],
  [/^frame\.drive\.travelPerTurn$/, '--turn-travel'],
];

const kebab = (name: string): string => `--${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;

/** The flag that sets a field of the library, of those that the command has: that of its last name, or of {@link others}. */
function flagOf(path: string, known: ReadonlySet<string>): string | undefined {
  const plain = path.replace(/\[\d+\]/g, '');
  const other = others.find(([field]) => field.test(plain));
  const flag = other ? plain.replace(...other).replace('gaugeLength', 'gauge-length') : kebab(plain.slice(plain.lastIndexOf('.') + 1));
  return known.has(/^--[a-z-]+/.exec(flag)?.[0] ?? '') ? flag : undefined;
}

/** The place of a column as the command takes it: the library counts from 0. */
const asPlace = (index: string): string => `#${Number(index) + 1}`;

/** The sentence of a wrong argument as a user of the command reads it: without the function, and with the flag for its field. */
export function pathAsFlag(message: string, path: string, known: ReadonlySet<string>): string {
  const at = message.indexOf(`: ${path} `);
  if (at < 0) return message;
  // what names a flag in place of a function says more
  const from = message.startsWith('--') ? message.slice(0, at + 2) : '';
  return `${from}${flagOf(path, known) ?? path}${message.slice(at + 2 + path.length)}`
    .replace(/\boptions\.columns\.(\w+)/g, '--column $1=')
    .replace(/\boptions\.units\.(\w+)/g, '--unit $1=')
    .replace(/\boptions\.(decimal|separator|sheet)\b/g, '--$1')
    .replace('startShare and spanShare', '--window-start and --window-span')
    .replace(/\(place (\d+)\)/g, (_, index: string) => `(${asPlace(index)})`)
    .replace(/\b(\d+)(?=(?: '[^']*')? goes up to)/g, asPlace)
    .replace(/(--column \w+= must name a column .*, got )(\d+)$/, (_, said: string, index: string) => `${said}${asPlace(index)}`)
    .replace(/(--column \w+= must name a column .*, got "\d+"$)/, '$1 (the first column is #1)');
}
