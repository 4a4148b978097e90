import { LARGEST_READING, requireColumn, requireObject, type TensionColumns, type TensionRecord } from '../base/index.js';

/** @internal The columns of a record, checked: as long as the force and finite, but that extension and strain may end early; others are refused. */
export function requireColumns(from: string, record: TensionColumns, least = 2): TensionRecord {
  requireObject(from, 'record', record);
  const force = requireColumn(from, 'record.force', record.force, { least, largest: LARGEST_READING });
  const rule = { length: force.length, largest: LARGEST_READING };
  const column = (name: keyof TensionColumns, endsEarly = false) =>
    record[name] === undefined ? {} : { [name]: requireColumn(from, `record.${name}`, record[name], { ...rule, endsEarly }) };
  return {
    force,
    ...column('extension', true),
    ...column('strain', true),
    ...column('travel'),
    ...column('transverseStrain', true),
    ...column('time'),
  };
}
