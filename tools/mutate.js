/**
 * `npm run mutate:fast -- FILE... [--tests FILE]... [--show]`: mutation testing in milliseconds a change. The changes are those of
 * `npm run mutate`, made by Stryker's instrumenter, but they stand in one bundle of each test file and are switched on one after the other.
 * Tests are those of the file's floor (`vitest.stryker.config.js`), or those given.
 */
import { fork } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { relative, resolve } from 'node:path';
import { clearTimeout, setTimeout } from 'node:timers';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import vm from 'node:vm';
import { Instrumenter } from '@stryker-mutator/instrumenter';
import { JestAsymmetricMatchers, JestChaiExpect, JestExtend } from '@vitest/expect';
import * as chai from 'chai';
import { build } from 'esbuild';
import { glob } from 'tinyglobby';
import { testsOf } from '../vitest.stryker.config.js';

/** A change that takes longer than this [ms] never ends, and is noticed by that; the first run of all tests may take ten times as long. */
const PATIENCE = 30_000;

const quiet = { debug() {}, info() {}, warn() {}, isDebugEnabled: () => false };

/** Source with every change behind a switch, and the list of changes. */
async function changed(file) {
  const given = [{ name: resolve(file), content: readFileSync(file, 'utf8'), mutate: true }];
  const { files, mutants } = await new Instrumenter(quiet).instrument(given, { plugins: null, ignorers: [], excludedMutations: [] });
  return { source: files[0].content, mutants };
}

/** Test files as scripts, each with the changed source in it. */
async function scriptsOf(tests, file, source) {
  const { outputFiles } = await build({
    entryPoints: tests,
    bundle: true,
    write: false,
    outdir: 'unused',
    outbase: '.',
    platform: 'node',
    format: 'cjs',
    external: ['vitest'],
    logLevel: 'error',
    define: { 'import.meta.url': JSON.stringify(`file://${resolve(file)}`) },
    plugins: [
      {
        name: 'changed source',
        setup: ({ onLoad }) =>
          onLoad({ filter: new RegExp(`/${file.replaceAll('.', '\\.')}$`) }, () => ({ contents: source, loader: 'ts' })),
      },
    ],
  });
  return outputFiles.map(({ text }) => new vm.Script(`(function (require, module, exports) {${text}\n})`));
}

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
const expect = Object.assign((value, message) => chai.expect(value, message), chai.expect);
const anyType = new Proxy(() => anyType, { get: () => anyType, apply: () => anyType });
const outside = createRequire(import.meta.url);

/** Loads a test file afresh: the tests that it registers, with what is to run before and after them. */
function loaded(script) {
  const tests = [];
  let around = [{ once: [], before: [], after: [] }];
  const describe = (_name, body) => {
    const outer = around;
    around = [...around, { once: [], before: [], after: [] }];
    body();
    around = outer;
  };
  const test = (name, ...rest) => tests.push({ name, body: rest.find((one) => typeof one === 'function'), around });
  const each = (register) => (rows) => (name, body) =>
    rows.forEach((row) => register(String(name), () => (Array.isArray(row) ? body(...row) : body(row))));
  describe.each = each(describe);
  test.each = each(test);
  const vitest = {
    describe,
    test,
    it: test,
    expect,
    expectTypeOf: anyType,
    // a test that counts calls does not run here, and is named as such
    vi: anyType,
    beforeAll: (one) => around.at(-1).once.push(one),
    beforeEach: (one) => around.at(-1).before.push(one),
    afterEach: (one) => around.at(-1).after.push(one),
    afterAll() {},
  };
  const module = { exports: {} };
  script.runInThisContext()((name) => (name === 'vitest' ? vitest : outside(name)), module, module.exports);
  return tests;
}

async function run({ body, around }) {
  for (const { once } of around) for (const one of once.splice(0)) await one();
  for (const { before } of around) for (const one of before) await one();
  await body();
  for (const { after } of around) for (const one of after) await one();
}

/** The switches read this object, and count in it what they are asked; a bundle keeps hold of the counts that it finds first, so they stay one object. */
const counts = {};
const switches = (globalThis.__stryker__ = { mutantCoverage: { static: {}, perTest: counts } });
/** What is asked from now on. */
function counted() {
  switches.currentTestId = `run ${Object.keys(counts).length}`;
  return (counts[switches.currentTestId] = {});
}

/** What one test reaches when nothing is changed: how often each change, by loading its file and by running. */
async function reached(scripts, tests) {
  const plan = [];
  for (const [file, script] of scripts.entries()) {
    const byLoading = counted();
    for (const [place, one] of loaded(script).entries()) {
      const byRunning = counted();
      const start = performance.now();
      try {
        await run(one);
        plan.push({ file, place, name: one.name, byLoading, byRunning, ms: performance.now() - start });
      } catch (error) {
        process.send({ broken: `${tests[file]}, ${one.name}: ${String(error?.message).slice(0, 200)}` });
      }
    }
  }
  switches.currentTestId = undefined;
  return plan.sort((a, b) => a.ms - b.ms);
}

/** Whether a test fails under a change; those that reach it are run, quickest first. */
async function isNoticed(id, plan, scripts) {
  const reaching = plan.filter(({ byLoading, byRunning }) => id in byLoading || id in byRunning);
  const files = new Map();
  switches.activeMutant = id;
  switches.hitLimit =
    1e5 + 100 * Math.max(0, ...reaching.map(({ byLoading, byRunning }) => Math.max(byLoading[id] ?? 0, byRunning[id] ?? 0)));
  try {
    for (const { file, place } of reaching) {
      switches.hitCount = 0;
      if (!files.has(file)) files.set(file, loaded(scripts[file]));
      switches.hitCount = 0;
      await run(files.get(file)[place]);
    }
    return reaching.length > 0 ? 'survived' : 'not reached';
  } catch {
    return 'noticed';
  } finally {
    switches.activeMutant = undefined;
  }
}

/** The child: goes through the changes of a file, and tells what became of each. */
async function tryChanges({ file, tests, from }) {
  const { source, mutants } = await changed(file);
  const scripts = await scriptsOf(tests, file, source);
  const plan = await reached(scripts, tests);
  for (const { id, location, mutatorName: kind, replacement } of mutants.slice(from)) {
    const change = { line: location.start.line + 1, column: location.start.column + 1, kind, replacement };
    process.send({ begun: change });
    process.send({ done: { ...change, status: await isNoticed(id, plan, scripts) } });
  }
  process.send({ finished: true });
}

/** What became of the changes of a file; one that never ends costs its child, and the next child goes on behind it. */
async function changesOf(file, tests) {
  const results = [];
  const broken = new Set();
  const goOn = () =>
    new Promise((ended, failed) => {
      let [begun, finished] = [undefined, false];
      const child = fork(fileURLToPath(import.meta.url), [], {
        env: { ...process.env, TRY: JSON.stringify({ file, tests, from: results.length }) },
      });
      let endless = false;
      const kill = () => {
        endless = true;
        child.kill('SIGKILL');
      };
      let timer = setTimeout(kill, 10 * PATIENCE);
      child.on('message', (message) => {
        clearTimeout(timer);
        timer = setTimeout(kill, message.begun ? PATIENCE : 10 * PATIENCE);
        if (message.broken) broken.add(message.broken);
        if (message.begun) begun = message.begun;
        if (message.done) [begun] = [undefined, results.push(message.done)];
        if (message.finished) finished = true;
      });
      child.on('exit', () => {
        clearTimeout(timer);
        if (begun) results.push({ ...begun, status: endless ? 'noticed' : 'not known: the process ended' });
        if (finished || begun) ended(finished);
        else failed(new Error(`${file}: the tests cannot be run`));
      });
    });
  while (!(await goOn()));
  return { results, broken };
}

async function main() {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { tests: { type: 'string', multiple: true }, show: { type: 'boolean', default: false } },
  });
  let [all, noticed] = [0, 0];
  const score = (name, good, of) => console.log(`${name}: ${good} of ${of} (${((100 * good) / of).toFixed(1)} %)`);
  for (const file of positionals.map((one) => relative('.', one))) {
    const tests = await glob(values.tests ?? testsOf(file.split('/')[1]), { ignore: ['test/record/fuzz.test.ts'] });
    const { results, broken } = await changesOf(file, tests);
    const good = results.filter(({ status }) => status === 'noticed').length;
    all += results.length;
    noticed += good;
    score(file, good, results.length);
    for (const line of broken) console.log(`  does not run here: ${line}`);
    if (values.show)
      for (const { status, line, column, kind, replacement } of results)
        if (status !== 'noticed') console.log(`  ${line}:${column} ${status}, ${kind}: ${replacement.replace(/\s+/g, ' ').slice(0, 100)}`);
  }
  if (positionals.length > 1) score('together', noticed, all);
}

if (process.env.TRY) await tryChanges(JSON.parse(process.env.TRY));
else await main();
