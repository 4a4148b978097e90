import { InputError, LARGEST_READING, requireColumn, requireObject, type TensionColumns, type TensionRecord } from '../../base/index.js';

/** The columns beside the force, and whether they may end early. */
const others = { extension: true, strain: true, travel: false, transverseStrain: true, time: false } as const;
const names = Object.keys(others) as readonly (keyof typeof others)[];

/** @internal The columns of a record, checked: as long as the force and finite, but that extension and strain may end early; others are refused. */
export function requireColumns(from: string, record: TensionColumns, least = 2): TensionRecord {
  requireObject(from, 'record', record);
  const given: Partial<TensionColumns> = record;
  if (given.force === undefined && 'pressure' in given)
    throw new InputError(
      from,
      'record.force',
      'missing',
      'must be an array of numbers: the record holds pressure, which pressureToForce or applyCalibration turns into force',
      given.force,
    );
  const force = requireColumn(from, 'record.force', record.force, { least, largest: LARGEST_READING });
  const checked: { -readonly [Name in keyof TensionRecord]: TensionRecord[Name] } = { force };
  for (const name of names)
    if (record[name] !== undefined)
      checked[name] = requireColumn(from, `record.${name}`, record[name], {
        length: force.length,
        endsEarly: others[name],
        largest: LARGEST_READING,
      });
  return checked;
}
