/** Wrong values for every field of a call's arguments, those that are there and those that the types allow. */
import ts from 'typescript';

/** Way to a field: the parameter's place, then names and indices. */
export type Path = readonly (string | number)[];

/** One wrong call. */
export interface Mutation {
  readonly path: Path;
  readonly value: unknown;
  /** Whether it must be refused: a number that is none, or a word that is none, can never be right. */
  readonly never: boolean;
  /** Whether the call does not give the field. */
  readonly absent?: boolean;
  /** Whether it must be refused, or give what the call gives without the field: null, which JSON has for nothing. */
  readonly nothing?: boolean;
}

/** What functions of the library make and check; others take it as a whole. */
const made = [
  'TensionResult',
  'TestResult',
  'CompressionResult',
  'BendingResult',
  'ShearResult',
  'BrinellResult',
  'CuppingResult',
  'UnloadingResult',
  'ReplicatesResult',
  'TestPlan',
  'UncertaintyBudget',
  'TrialSet',
  'TrailStep',
  'Finding',
  'WhatIfRow',
  'AnswerExplanation',
  'Reading',
  'CurveResult',
  'Exercise',
  'ForceVerificationResult',
  'UsableCalibration',
  'HardeningLaw',
  'Figure',
  'HardeningPicture',
  'LawComparison',
  'BatchComparison',
  'Calibration',
  'CheckPieceChart',
  'CylinderFriction',
  'FittedCompliance',
  'Leak',
  'TrialDistribution',
  'ConsistencyWeb',
  'ModulusWindow',
  'ArrayBuffer',
  'Uint8Array',
  'SharedArrayBuffer',
];

/** Fields of a parameter that hold a thing that the library made; its own path where it is one itself. */
export function madeFields(checker: ts.TypeChecker, parameter: ts.ParameterDeclaration, place: number): Path[] {
  const names = (node: ts.TypeNode | undefined): boolean => (node?.getText().match(/\w+/g) ?? []).some((word) => made.includes(word));
  if (names(parameter.type) || parameter.type?.getText() === 'object') return [[place]];
  const holds = ({ valueDeclaration }: ts.Symbol): boolean =>
    valueDeclaration !== undefined && ts.isPropertySignature(valueDeclaration) && names(valueDeclaration.type);
  return checker
    .getNonNullableType(checker.getTypeAtLocation(parameter))
    .getProperties()
    .filter(holds)
    .map(({ name }) => [place, name]);
}

const isColumn = (value: unknown): value is ArrayLike<unknown> => Array.isArray(value) || ArrayBuffer.isView(value);
const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !isColumn(value);

/** A copy of the arguments with another value at one place. */
export function changed(whole: unknown, [key, ...rest]: Path, value: unknown): unknown {
  if (key === undefined) return value;
  const source: unknown = whole ?? {};
  const inner = changed((source as Record<string | number, unknown>)[key], rest, value);
  if (Array.isArray(source)) return Object.assign([...(source as unknown[])], { [key]: inner });
  if (ArrayBuffer.isView(source)) {
    const copy: unknown[] | Float64Array =
      typeof inner === 'number' ? Float64Array.from(source as Float64Array) : [...(source as Float64Array)];
    copy[key as number] = inner;
    return copy;
  }
  return { ...(source as object), [key]: inner };
}

/** Numbers that are finite, but whose squares and products are not, or vanish. */
const EXTREME = [1e200, -1e200, 1e-300];

/** What is there in a list, which reads like it where it is made text. */
const numbers = (path: Path, value?: number): Mutation[] => [
  ...[NaN, Infinity, -Infinity, 'x', {}, [value ?? 2]].map((one) => ({ path, value: one, never: true })),
  ...[0, -1, ...EXTREME, ...(value === undefined ? [] : [undefined, null])].map((one) => ({ path, value: one, never: false })),
];

/** Whether the types allow a list at a place of the arguments. */
export function takesList(checker: ts.TypeChecker, type: ts.Type, [key, ...rest]: Path): boolean {
  return (type.isUnion() ? type.types : [type]).some((part) => {
    if (typeof key === 'string') {
      const property = part.getProperty(key);
      const inner = property ? checker.getTypeOfSymbol(property) : part.getStringIndexType();
      if (inner) return takesList(checker, inner, rest);
      // names that a type parameter stands for are not known
      return ((part as ts.ObjectType).objectFlags & ts.ObjectFlags.Mapped) !== 0;
    }
    const entry = part.flags & ts.TypeFlags.Object ? part.getNumberIndexType() : undefined;
    return entry !== undefined && (key === undefined || takesList(checker, entry, rest));
  });
}

/** Wrong values for what is there. */
export function presentFields(value: unknown, path: Path): Mutation[] {
  if (typeof value === 'number') return numbers(path, value);
  if (typeof value === 'string')
    return [undefined, null, 5, '', 'no such word', [value]].map((one) => ({ path, value: one, never: false }));
  if (typeof value === 'boolean') return [null, 'yes', 5].map((one) => ({ path, value: one, never: true }));
  if (isColumn(value)) {
    const whole = [[], undefined, null, 5, 'x', {}].map((one) => ({ path, value: one, never: false }));
    if (typeof value[0] !== 'number')
      return [
        ...whole,
        ...Array.from(value)
          .slice(0, 2)
          .flatMap((one, i) => presentFields(one, [...path, i])),
      ];
    const middle = [...path, value.length >> 1];
    return [
      ...whole,
      { path, value: Array.from(value).slice(0, -1), never: false },
      { path, value: Array.from(value, () => 0), never: false },
      // a row of text among rows of cells may be the names of the columns
      { path, value: Array.from(value, () => 'x'), never: path.length < 2 || typeof path[path.length - 1] !== 'number' },
      ...[NaN, Infinity, -Infinity, 'x', undefined, ...EXTREME].map((one) => ({ path: middle, value: one, never: false })),
      ...EXTREME.map((factor) => ({ path, value: Array.from(value, (one) => factor * (one as number)), never: false })),
    ];
  }
  if (isRecord(value)) {
    const whole = [undefined, null, 5, 'x', []].map((one) => ({ path, value: one, never: false }));
    return [...whole, ...Object.entries(value).flatMap(([name, one]) => presentFields(one, [...path, name]))];
  }
  return [];
}

/** Wrong values for optional fields that the call leaves out, from the type of the parameter. */
export function absentFields(checker: ts.TypeChecker, type: ts.Type, given: unknown, path: Path, depth = 0): Mutation[] {
  const plain = checker.getNonNullableType(type);
  const members = plain.isUnion() ? plain.types : [plain];
  const seen = new Set<string>();
  const found: Mutation[] = [];
  for (const member of members) {
    if (
      !(member.flags & ts.TypeFlags.Object) ||
      member.getCallSignatures().length > 0 ||
      checker.getIndexTypeOfType(member, ts.IndexKind.Number)
    )
      continue;
    for (const property of member.getProperties()) {
      const { name } = property;
      const value = isRecord(given) ? given[name] : undefined;
      if (seen.has(name) || name.startsWith('__')) continue;
      seen.add(name);
      const own = checker.getNonNullableType(checker.getTypeOfSymbol(property));
      const at = [...path, name];
      const parts = own.isUnion() ? own.types : [own];
      if (value === undefined) {
        found.push({ path: at, value: null, never: false, nothing: true });
        // where a name may stand for a number, a text is no wrong kind of value
        const named = parts.some((part) => part.flags & ts.TypeFlags.StringLike);
        if (parts.some((part) => part.flags & ts.TypeFlags.NumberLike))
          found.push(...numbers(at).filter(({ value: one }) => !(named && one === 'x')));
        else if (parts.every((part) => part.flags & ts.TypeFlags.StringLiteral))
          found.push({ path: at, value: 'no such word', never: true }, { path: at, value: 5, never: true });
        else if (parts.some((part) => isNumberColumn(checker, part)))
          found.push({ path: at, value: [NaN], never: false }, ...[['x'], 5, 'x'].map((one) => ({ path: at, value: one, never: true })));
        else if (parts.some((part) => part.flags & ts.TypeFlags.Object) && parts.every((part) => part.getCallSignatures().length === 0))
          found.push(...[5, 'x'].map((one) => ({ path: at, value: one, never: false })));
      }
      if (depth < 2 && !isColumn(value)) found.push(...absentFields(checker, own, value, at, depth + 1));
    }
  }
  return found;
}

function isNumberColumn(checker: ts.TypeChecker, type: ts.Type): boolean {
  const element = checker.getIndexTypeOfType(type, ts.IndexKind.Number);
  return element !== undefined && (element.flags & ts.TypeFlags.NumberLike) !== 0;
}

/** Places in a result that hold NaN or infinity. */
export function unsound(value: unknown, path = 'result', seen = new Set<object>()): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (typeof value !== 'object' || value === null || seen.has(value)) return [];
  seen.add(value);
  if (ArrayBuffer.isView(value)) {
    const at = Array.from(value as Float64Array).findIndex((one) => !Number.isFinite(one));
    return at < 0 ? [] : [`${path}[${at}]`];
  }
  return Object.entries(value).flatMap(([name, one]) => unsound(one, `${path}.${name}`, seen));
}
