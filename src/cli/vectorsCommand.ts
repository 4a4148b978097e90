import { Command } from 'commander';
import { STATUS, type Session } from './session.js';
import { usage } from './usage.js';
import { runVectors, type CheckVector, type VectorCheck } from '../vectors/index.js';
import afterFracture from '../../vectors/after-fracture.json' with { type: 'json' };
import afterNecking from '../../vectors/after-necking.json' with { type: 'json' };
import bending from '../../vectors/bending.json' with { type: 'json' };
import brinell from '../../vectors/brinell.json' with { type: 'json' };
import compression from '../../vectors/compression.json' with { type: 'json' };
import decisions from '../../vectors/decisions.json' with { type: 'json' };
import elasticLine from '../../vectors/elastic-line.json' with { type: 'json' };
import elongation from '../../vectors/elongation.json' with { type: 'json' };
import frame from '../../vectors/frame.json' with { type: 'json' };
import hardening from '../../vectors/hardening.json' with { type: 'json' };
import hydraulics from '../../vectors/hydraulics.json' with { type: 'json' };
import laws from '../../vectors/laws.json' with { type: 'json' };
import lengths from '../../vectors/lengths.json' with { type: 'json' };
import outliers from '../../vectors/outliers.json' with { type: 'json' };
import planning from '../../vectors/planning.json' with { type: 'json' };
import precision from '../../vectors/precision.json' with { type: 'json' };
import rambergOsgood from '../../vectors/ramberg-osgood.json' with { type: 'json' };
import rates from '../../vectors/rates.json' with { type: 'json' };
import replicates from '../../vectors/replicates.json' with { type: 'json' };
import sections from '../../vectors/sections.json' with { type: 'json' };
import shear from '../../vectors/shear.json' with { type: 'json' };
import sheet from '../../vectors/sheet.json' with { type: 'json' };
import tension from '../../vectors/tension.json' with { type: 'json' };
import tolerance from '../../vectors/tolerance.json' with { type: 'json' };
import uncertainty from '../../vectors/uncertainty.json' with { type: 'json' };
import units from '../../vectors/units.json' with { type: 'json' };
import verification from '../../vectors/verification.json' with { type: 'json' };

/** Every vector of the package, topic by topic on the road of a test. */
const all = [
  ...[units, sections, lengths, hydraulics, verification, frame, elasticLine, tension, elongation, afterFracture],
  ...[hardening, laws, rambergOsgood, afterNecking, sheet, rates, planning],
  ...[compression, bending, shear, brinell],
  ...[uncertainty, replicates, outliers, tolerance, precision, decisions],
].flat() as unknown as readonly CheckVector[];

/** Digits for a reader: what the tolerance leaves, and two more. */
function shown(value: number, tolerance: number): string {
  const digits = Math.ceil(Math.log10(Math.abs(value) / tolerance)) + 2;
  return String(Number(value.toPrecision(Math.min(17, Math.max(2, digits)))));
}

/** A line for each check: vector, function and place, what was expected and what came. */
function table(checks: readonly VectorCheck[]): string {
  const rows = checks.map(({ id, function: name, at, expected, tolerance, unit, got, passed, problem }) => [
    passed ? 'pass' : 'FAIL',
    id,
    at === undefined ? name : `${name} ${at}`,
    `${expected} ± ${tolerance}${unit === undefined || unit === '1' ? '' : ` ${unit}`}`,
    got === undefined ? (problem ?? '') : shown(got, tolerance),
  ]);
  const heads = ['', 'vector', 'function', 'expected', 'got'];
  const widths = heads.map((head, k) => Math.max(head.length, ...rows.map((row) => row[k]!.length)));
  const line = (row: readonly string[]): string => row.map((cell, k) => (k === row.length - 1 ? cell : cell.padEnd(widths[k]!))).join('  ');
  return [heads, ...rows].map((row) => `${line(row).trimEnd()}\n`).join('');
}

/** The command `vectors`: the check values of the handbook, run in this installation. */
export function vectorsCommand({ out, leave }: Session): Command {
  const command = new Command('vectors')
    .description('Runs the check values of the handbook in this installation: each with what is expected, what came, and its source.')
    .argument('[function...]', 'only vectors of these functions')
    .option('--json', 'print the checks as JSON')
    .addHelpText('after', '\nExample:\n  testpiece vectors round reductionOfArea\n');
  return command.action((names: readonly string[], { json }: { json?: true }) => {
    const unknown = names.find((name) => !all.some((one) => one.function === name));
    if (unknown !== undefined) {
      const there = [...new Set(all.map((one) => one.function))].sort((a, b) => a.localeCompare(b, 'en'));
      throw usage(`there is no check vector of '${unknown}'; there are some of ${there.join(', ')}`);
    }
    const chosen = names.length === 0 ? all : all.filter((one) => names.includes(one.function));
    const checks = runVectors(chosen);
    const failed = checks.filter(({ passed }) => !passed).length;
    if (json) out(`${JSON.stringify(checks, null, 1)}\n`);
    else out(`${table(checks)}\n${checks.length - failed} of ${checks.length} values of ${chosen.length} vectors within their tolerance\n`);
    if (failed > 0) leave(STATUS.unexpected);
  });
}
