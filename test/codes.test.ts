import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { catalogue, reasons } from '../src/index.js';
import { faultLibrary } from '../src/simulate/index.js';

const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => ({ file, text: readFileSync(`src/${file}`, 'utf8') }));
const inTable = (text: string): string => text.replaceAll('|', '\\|').replaceAll('{', '⟨').replaceAll('}', '⟩');

/** What each code of an `InputError` says of the argument. */
const inputErrors: Readonly<Record<string, string>> = {
  ambiguous: 'more than one reading is possible; the message lists them and the option that decides',
  empty: 'there is nothing in it',
  missing: 'it is needed and not there',
  'no-numbers': 'a file holds no rows of numbers',
  'not-finite': 'NaN or an infinity',
  'not-increasing': 'a column that must rise does not',
  'not-negative': 'it must be below 0',
  'not-positive': 'it must be above 0',
  'not-text': 'bytes that are no text',
  'out-of-range': 'outside what is allowed; the message says what is',
  'too-few': 'fewer samples, readings or pieces than needed',
  'too-large': 'more than the library takes',
  'unequal-lengths': 'columns that belong together differ in length',
  'unknown-option': 'an option of this name does not exist; the message lists those that do',
  'unknown-unit': 'a unit that is not known, or of another quantity',
  withheld: '`required` was given a failure; its path is the reason',
  'wrong-type': 'another kind of value',
};

test('the page of codes lists every finding, reason and error code with meaning and remedy', async () => {
  const findings = Object.entries(catalogue).map(
    ([code, { severity, about, message, remedy }]) => `| \`${code}\` | ${severity} | ${about} | ${inTable(message)} | ${inTable(remedy)} |`,
  );
  const page = `---
title: Codes
---

# Codes of findings, reasons and errors

Codes are never renamed. This page is made from the catalogues of \`testpiece/base\` and held to them by a test.

## Findings

What a result says of the test; \`⟨name⟩\` stands for a number of the finding. The weight can differ with the numbers: a note
is a remark, a caution is to be read beside a value, a fault is where a value is withheld or must not be used.

| code | weight | about | sentence | remedy |
| --- | --- | --- | --- | --- |
${findings.join('\n')}

## Reasons

Why a fit, a search or a property step gave no result (\`{ ok: false, reason, message }\`).

| reason | meaning | remedy |
| --- | --- | --- |
${Object.entries(reasons)
  .map(([code, { meaning, remedy }]) => `| \`${code}\` | ${meaning} | ${remedy} |`)
  .join('\n')}

## Errors

What an \`InputError\` says of an argument, with the path of the argument and the value that was received.

| code | the argument |
| --- | --- |
${Object.entries(inputErrors)
  .map(([code, meaning]) => `| \`${code}\` | ${meaning} |`)
  .join('\n')}

## Labelled faults

Bad records that the simulator makes (\`faultLibrary\` of \`testpiece/simulate\`), and the finding by which each is known.

| fault | what went wrong | finding |
| --- | --- | --- |
${faultLibrary.map(({ name, what, expected }) => `| ${name} | ${what} | \`${expected}\` |`).join('\n')}
`;
  await expect(page).toMatchFileSnapshot('../docs/codes.md');
});

test('every reason that the code gives is in the list, and every code of an error', () => {
  const given = sources.flatMap(({ text }) => [...text.matchAll(/failure\(\s*'([a-z-]+)'/g)].map(([, code]) => code!));
  expect([...new Set(given)].filter((code) => !(code in reasons))).toEqual([]);
  const thrown = sources
    .find(({ file }) => file.endsWith('InputError.ts'))!
    .text.match(/\| '([a-z-]+)'/g)!
    .map((one) => one.slice(3, -1));
  expect(Object.keys(inputErrors).sort()).toEqual(thrown.sort());
});

test('every finding of the catalogue is made somewhere', () => {
  const all = sources.filter(({ file }) => !file.includes('Catalogue')).map(({ text }) => text);
  const silent = Object.keys(catalogue).filter((code) => !all.some((text) => text.includes(`'${code}'`)));
  expect(silent).toEqual([]);
});
