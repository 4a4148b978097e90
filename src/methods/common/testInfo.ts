import {
  catalogue,
  InputError,
  requireBoolean,
  requireDay,
  requireFinite,
  requireNonNegative,
  requireObject,
  requireOneOf,
  requireOptions,
  requirePair,
  requirePositive,
  requireText,
  shownList,
  type Finding,
} from '../../base/index.js';
import { requireForceClass } from '../../uncertainty/index.js';
import { requireChannel, requireCylinder } from './forceOrigin.js';
import type { ForceCalibration, TestInfo } from './MethodResult.js';

const texts = [
  'identity',
  'material',
  'sampleDirection',
  'samplePlace',
  'operator',
  'date',
  'standard',
  'control',
  'rate',
  'grips',
  'extensometerClass',
  'remarks',
] as const;
const others = ['temperature', 'forceCalibration', 'calibratedForces', 'channelCalibration', 'cylinder', 'findings', 'invented'] as const;
const PATH = 'options.test';

/** Checks what is said of the force's verification. */
function requireCalibration(from: string, path: string, given: ForceCalibration): ForceCalibration {
  requireOptions(from, given, ['certificate', 'date', 'intervalMonths', 'forceClass', 'range'], path);
  if (given.certificate !== undefined) requireText(from, `${path}.certificate`, given.certificate);
  if (given.date !== undefined) requireDay(from, `${path}.date`, given.date);
  if (given.intervalMonths !== undefined) requirePositive(from, `${path}.intervalMonths`, given.intervalMonths);
  if (given.forceClass !== undefined) requireForceClass(from, `${path}.forceClass`, given.forceClass);
  if (given.range !== undefined) {
    const [low, high] = requirePair(from, `${path}.range`, given.range);
    requirePositive(from, `${path}.range`, low);
    if (high <= low) throw new InputError(from, `${path}.range`, 'not-increasing', 'must go up', given.range, shownList(given.range));
  }
  return { ...given, ...(given.range ? { range: [...given.range] } : {}) };
}

/** Checks the forces between which the channel is calibrated. */
function requireSpan(from: string, path: string, given: readonly [number, number]): readonly [number, number] {
  const [low, high] = requirePair(from, path, given);
  requireNonNegative(from, path, low);
  if (high <= low) throw new InputError(from, path, 'not-increasing', 'must go up', given, shownList(given));
  return [low, high];
}

/** Checks findings from before the analysis, as far as they are shown. */
function requireFindings(from: string, path: string, given: readonly Finding[]): readonly Finding[] {
  const list: unknown = given;
  if (!Array.isArray(list)) throw new InputError(from, path, 'wrong-type', 'must be a list of findings', given);
  given.forEach((one: Finding, k) => {
    requireObject(from, `${path}[${k}]`, one);
    requireOneOf(from, `${path}[${k}].code`, one.code, Object.keys(catalogue));
    requireOneOf(from, `${path}[${k}].severity`, one.severity, ['note', 'caution', 'fault']);
    for (const name of ['message', 'remedy'] as const) requireText(from, `${path}[${k}].${name}`, one[name]);
    requireObject(from, `${path}[${k}].values`, one.values);
  });
  return [...given];
}

/** @internal Checks who tested what: text, a number of degrees, a yes or no, and what is known of the force's verification. */
export function requireTest(from: string, test: TestInfo): TestInfo {
  requireOptions(from, test, [...texts, ...others], PATH);
  for (const name of texts) if (test[name] !== undefined) requireText(from, `${PATH}.${name}`, test[name]);
  if (test.temperature !== undefined) requireFinite(from, `${PATH}.temperature`, test.temperature);
  if (test.invented !== undefined) requireBoolean(from, `${PATH}.invented`, test.invented);
  const calibrated = test.calibratedForces !== undefined && requireSpan(from, `${PATH}.calibratedForces`, test.calibratedForces);
  const before = test.findings !== undefined && requireFindings(from, `${PATH}.findings`, test.findings);
  const channel = test.channelCalibration !== undefined && requireChannel(from, `${PATH}.channelCalibration`, test.channelCalibration);
  const cylinder = test.cylinder !== undefined && requireCylinder(from, `${PATH}.cylinder`, test.cylinder);
  const given = {
    ...test,
    ...(calibrated ? { calibratedForces: calibrated } : {}),
    ...(channel ? { channelCalibration: channel } : {}),
    ...(cylinder ? { cylinder } : {}),
    ...(before ? { findings: before } : {}),
  };
  const path = `${PATH}.forceCalibration`;
  const { forceCalibration: known } = test;
  if (typeof known === 'object') return { ...given, forceCalibration: requireCalibration(from, path, known) };
  if (known !== undefined) requireText(from, path, known);
  return given;
}
