import { InputError, shownList, type ColumnName } from '../../base/index.js';
import { dimensions, meaningOf, type NamedColumn } from './columnNames.js';

/** @internal A column that is not in use, and why. */
export interface SpareColumn {
  readonly column: NamedColumn;
  readonly why: string;
}

/** @internal Which column serves for what. */
export interface Assignment {
  readonly used: ReadonlyMap<ColumnName, NamedColumn>;
  /** Columns of displacement that strain times the length tells apart: one is the extension, the other the travel. */
  readonly rivals: readonly NamedColumn[];
  /** A strain column that confirms the extension, or decides between the rivals. */
  readonly check: NamedColumn | undefined;
  /** Columns that are, as far as was looked, the same as the one that serves. */
  readonly twins: readonly { readonly quantity: ColumnName; readonly column: NamedColumn }[];
  readonly ignored: readonly SpareColumn[];
}

/** Names of columns as a message lists them; with their places where names are equal. */
const listed = (columns: readonly NamedColumn[]): string =>
  columns
    .map(({ name, index }) =>
      columns.some((other) => other.index !== index && other.name === name) ? `'${name}' (place ${index})` : `'${name}'`,
    )
    .join(', ');

/** The columns that the options name; a place goes by number, a name with or without its unit. */
function chosenColumns(
  from: string,
  columns: readonly NamedColumn[],
  given: Readonly<Partial<Record<ColumnName, string | number | undefined>>>,
): Map<ColumnName, NamedColumn> {
  const chosen = new Map<ColumnName, NamedColumn>();
  for (const [quantity, wanted] of Object.entries(given) as [ColumnName, string | number | undefined][]) {
    if (wanted === undefined) continue;
    const path = `options.columns.${quantity}`;
    const found = columns.filter(({ name, heading, index }) =>
      typeof wanted === 'number' ? index === wanted : name === wanted || heading === wanted,
    );
    if (found.length === 0) throw new InputError(from, path, 'out-of-range', `must name a column (${listed(columns)})`, wanted);
    if (found.length > 1) throw new InputError(from, path, 'ambiguous', `must give a place: ${listed(found)}`, wanted);
    chosen.set(quantity, found[0]!);
  }
  return chosen;
}

/** A column with what its name means. */
type FreeColumn = { readonly column: NamedColumn } & ReturnType<typeof meaningOf>;

/** The columns that are not chosen and hold numbers; the others are listed as ignored. */
function freeColumns(columns: readonly NamedColumn[], chosen: ReadonlyMap<ColumnName, NamedColumn>, ignored: SpareColumn[]): FreeColumn[] {
  const taken = new Set([...chosen.values()].map(({ index }) => index));
  return columns
    .filter((column) => {
      if (taken.has(column.index)) return false;
      if (column.kind === 'number' || column.kind === 'clock') return true;
      ignored.push({ column, why: column.kind === 'empty' ? 'it is empty' : `the cells of '${column.name}' are not all numbers` });
      return false;
    })
    .map((column) => ({ column, ...meaningOf(column) }));
}

/** What a plain displacement serves for: it is the extensometer's beside a qualified travel, else the crosshead's; beside another one, who knows. */
function plainDisplacement(free: readonly FreeColumn[], travel: NamedColumn | undefined, measured: boolean): ColumnName | 'ignored' {
  const qualified =
    (travel !== undefined && meaningOf(travel).meaning !== 'displacement') || free.some(({ meaning }) => meaning === 'travel');
  if (qualified && !measured) return 'extension';
  return qualified || travel ? 'ignored' : 'travel';
}

/** Of several columns of a quantity those whose unit is of the right kind, and of these the qualified. */
function bestOf(quantity: ColumnName, list: readonly FreeColumn[]): NamedColumn[] {
  const fitting = list.filter(({ column }) => column.dimension === dimensions[quantity]);
  const fit = fitting.length > 0 ? fitting : list;
  const qualified = fit.filter((one) => one.qualified);
  return (qualified.length > 0 ? qualified : fit).map(({ column }) => column);
}

/** @internal Assigns columns to quantities; the options decide first, then qualified names, then names. */
export function assignColumns(
  from: string,
  columns: readonly NamedColumn[],
  given: Readonly<Partial<Record<ColumnName, string | number | undefined>>>,
  lengthKnown: boolean,
  alike: (a: NamedColumn, b: NamedColumn) => boolean = () => false,
): Assignment {
  const chosen = chosenColumns(from, columns, given);
  const used = new Map(chosen);
  const ignored: SpareColumn[] = [];
  const free = freeColumns(columns, chosen, ignored);
  const measured = used.has('extension') || free.some(({ meaning }) => meaning === 'extension');
  const plain = plainDisplacement(free, used.get('travel'), measured);
  const candidates = new Map<ColumnName, FreeColumn[]>();
  for (const one of free) {
    const quantity = one.meaning === 'displacement' ? plain : one.meaning;
    if (quantity === 'ignored' || quantity === 'unknown')
      ignored.push({ column: one.column, why: quantity === 'unknown' ? 'its name is not known' : 'it is not needed' });
    else if (used.has(quantity)) ignored.push({ column: one.column, why: `another column was chosen for ${quantity}` });
    else candidates.set(quantity, [...(candidates.get(quantity) ?? []), one]);
  }
  let rivals: NamedColumn[] = [];
  const twins: Assignment['twins'][number][] = [];
  for (const [quantity, list] of candidates) {
    const choice = bestOf(quantity, list);
    for (const { column } of list)
      if (!choice.includes(column)) ignored.push({ column, why: `'${choice[0]!.name}' serves for ${quantity}` });
    if (
      choice.length === 2 &&
      quantity === 'travel' &&
      !measured &&
      lengthKnown &&
      candidates.get('strain')?.length === 1 &&
      list.every(({ meaning }) => meaning === 'displacement')
    )
      rivals = choice;
    else if (choice.length > 1 && choice.slice(1).every((column) => alike(choice[0]!, column))) {
      used.set(quantity, choice[0]!);
      twins.push(...choice.slice(1).map((column) => ({ quantity, column })));
    } else if (choice.length > 1)
      throw new InputError(
        from,
        `options.columns.${quantity}`,
        'ambiguous',
        `must name one of the columns ${listed(choice)}`,
        choice.map(({ heading }) => heading),
        shownList(choice.map(({ heading }) => heading)),
      );
    else used.set(quantity, choice[0]!);
  }
  const drop = (name: ColumnName, why: string): NamedColumn | undefined => {
    const column = used.get(name);
    if (!column || chosen.has(name)) return undefined;
    used.delete(name);
    ignored.push({ column, why });
    return column;
  };
  if (used.has('force')) drop('pressure', 'the force serves');
  const spare = used.has('extension') || rivals.length > 0 ? drop('strain', 'the extension serves') : undefined;
  // the twin of a column that is not in use is not in use either
  for (const { quantity, column } of twins)
    if (!used.has(quantity)) ignored.push({ column, why: `the other column of ${quantity} is not in use` });
  return {
    used,
    rivals,
    check: lengthKnown ? spare : undefined,
    twins: twins.filter(({ quantity }) => used.has(quantity)),
    ignored,
  };
}
