import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { toStrains } from '../../src/cli/flags.js';
import { readingsOf } from '../../src/cli/readingsOf.js';
import { command } from '../support/command.js';

const said = (text: string): string => {
  try {
    return JSON.stringify(readingsOf('--round', text));
  } catch (reason) {
    return (reason as Error).message;
  }
};

describe('a decimal comma is never taken for two readings of one length', () => {
  test.each(['5,02', '8,01', '4,3', '8,8', '12,12', '10,2', '8,01,8,02', '8,01,8.02', '8,01,8', '1.234,5', '0,8'])(
    '%s is refused',
    (text) => {
      expect(() => readingsOf('--round', text)).toThrow();
    },
  );

  test('the message names both that may have been meant', () => {
    expect(said('5,02')).toBe('--round 5,02 may be 5.02 with a decimal comma, or 2 readings: write decimal points (5.02, or 5.0,2.0)');
    expect(said('8.01,1.99')).toMatch(/differ by more than 20 % of their mean/);
  });

  test.each([
    ['8.01,8.00,7.99', [8.01, 8, 7.99]],
    ['8.01,8', [8.01, 8]],
    ['8,8.01', [8, 8.01]],
    ['8, 8', [8, 8]],
    ['8,8,8', [8, 8, 8]],
    ['10.9,9.1', [10.9, 9.1]],
    ['8.0,8.0', [8, 8]],
  ])('%s are readings', (text, values) => {
    expect(readingsOf('--round', text)).toEqual(values);
  });

  // by hand: 12000 N on the circle of 5.02 mm is 606 MPa; taken for 5 and 2 mm it was 1247 MPa
  test.each([
    ['shear', '--maximum-force', '12000', '--round', '5,02', '--planes', '1'],
    ['shear', '--maximum-force', '12000', '--area', '50,3', '--planes', '1'],
    ['shear', '--maximum-force', '12000', '--area', '50.3,50.4', '--planes', '1'],
    ['shear', '--maximum-force', '12000', '--rectangular', '10,2x5', '--planes', '1'],
    ['brinell', '--ball', '10', '--force', '29420', '--indentation', '4,3'],
  ])('%s %s %s %s %s', async (...argv) => {
    const { status, out, error } = await command(...argv);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(error).toMatch(/^testpiece: --(round|area|rectangular|indentation) .*\n$/);
  });
});

test('a decimal comma is never taken for two strains', () => {
  for (const text of ['0,2%', '0,2', '2,5%', '5,10%', '0,05%,0,25%', '0.1%,0,2%']) expect(() => toStrains(text)).toThrow(/decimal points/);
  expect(toStrains('0.1%,0.2%')).toEqual([0.001, 0.002]);
  expect(toStrains('5%,10%')).toEqual([0.05, 0.1]);
});

test('a wrong option of a file is named by its flag', async () => {
  const file = join(mkdtempSync(join(tmpdir(), 'testpiece-')), 'beam.csv');
  writeFileSync(file, 'Kraft [N];Anzeige [mm]\n0;0\n10;1\n20;2\n');
  const { status, error } = await command('report', file, '--round', '8', '--gauge-length', '40');
  expect(status).toBe(2);
  expect(error).toContain('--column travel= must name a column of extension, strain or travel');
});
