import { describe, expect, test } from 'vitest';
import { comparePointer, type PointerCause, type PointerReading } from '../../src/force/index.js';

describe('why pointer and record differ', () => {
  const fast = { forceRate: 3000, frequency: 100 };
  const pushed =
    'The pointer was probably pushed past by its own momentum or by the shock of fracture, or the record lost its peak to a filter';
  const stuck = 'The pointer probably stuck, drags or was not engaged, or the two channels were calibrated at different times';
  const between = 'The peak may have passed between two samples of the record';
  const left = 'The pointer was probably not brought back before the test';
  const spiked = 'The maximum of the record is probably a spike';

  // 1 % of 1000 N is allowed; between two samples the force rises by 30 N
  test.each<[PointerReading, PointerCause, string]>([
    [{ pointer: 1030, recorded: 1000, ...fast }, 'peak-between-samples', between],
    [{ pointer: 1031, recorded: 1000, ...fast }, 'pushed-past', pushed],
    [{ pointer: 1020, recorded: 1000, forceRate: 3000 }, 'pushed-past', pushed],
    [{ pointer: 1020, recorded: 1000, frequency: 100 }, 'pushed-past', pushed],
    [{ pointer: 1020, recorded: 1000, before: 1010 }, 'not-reset', left],
    [{ pointer: 1020, recorded: 1000, before: 1009 }, 'pushed-past', pushed],
    [{ pointer: 1020, recorded: 1000, before: 1030 }, 'not-reset', left],
    [{ pointer: 1020, recorded: 1000, before: 1031 }, 'pushed-past', pushed],
    [{ pointer: 980, recorded: 1000, spike: 10 }, 'spike-in-record', spiked],
    [{ pointer: 980, recorded: 1000, spike: 30 }, 'spike-in-record', spiked],
    [{ pointer: 980, recorded: 1000, spike: 9 }, 'stuck', stuck],
    [{ pointer: 980, recorded: 1000, spike: 31 }, 'stuck', stuck],
    [{ pointer: 980, recorded: 1000 }, 'stuck', stuck],
    [{ pointer: 980, recorded: 1000, ...fast, before: 985 }, 'stuck', stuck],
  ])('%j: %s', (reading, cause, sentence) => {
    const found = comparePointer(reading);
    expect(found).toMatchObject({ cause, difference: reading.pointer - 1000 });
    expect(found.findings).toHaveLength(1);
    expect(found.findings[0]!.code).toBe(reading.pointer > 1000 ? 'pointer-above-record' : 'pointer-below-record');
    const share = expect.closeTo(Math.abs(reading.pointer - 1000) / 10, 9) as number;
    expect(found.findings[0]!.values).toEqual({ pointer: reading.pointer, recorded: 1000, share, cause: sentence });
  });

  test('1 % of the force, or half a division where that is more, is agreement, exactly hit as well', () => {
    for (const reading of [
      { pointer: 1010, recorded: 1000 },
      { pointer: 990, recorded: 1000 },
      { pointer: 1025, recorded: 1000, division: 50 },
      { pointer: 1010, recorded: 1000, division: 10 },
    ])
      expect(comparePointer(reading)).toMatchObject({ cause: 'agree', findings: [] });
    expect(comparePointer({ pointer: 1025.1, recorded: 1000, division: 50 }).cause).toBe('pushed-past');
    expect(comparePointer({ pointer: 1025, recorded: 1000, division: 50 }).allowed).toBeCloseTo(25, 6);
  });

  test('more than 3 % is a fault', () => {
    const severityAt = (pointer: number) => comparePointer({ pointer, recorded: 1000 }).findings[0]!.severity;
    expect(severityAt(1030)).toBe(severityAt(970));
    expect([severityAt(1031), severityAt(969)]).toEqual(['fault', 'fault']);
    expect(severityAt(1030)).not.toBe('fault');
  });
});
