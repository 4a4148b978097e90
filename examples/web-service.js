/**
 * A web service of one's own: a logger's file is posted, the answer is the result as JSON or the page. Here it is started, asked with an invented record
 * of an apprentice's bar, and stopped.
 */
/* global fetch */
import { createServer } from 'node:http';
import { buffer } from 'node:stream/consumers';
import { analyseTension, fromJson, isInputError, readRecord, round, toJson } from 'testpiece';
import { drawFigures } from 'testpiece/render';
import { figures, renderHtml, summarise } from 'testpiece/report';
import { simulateTension, writeRecord } from 'testpiece/simulate';

/** Bytes of a file; a longer one is refused before it is read. */
const LIMIT = 1_000_000;

/** What the address says of the piece; a wrong or missing number is refused by the library, by name. */
function evaluate(file, query) {
  const given = (name) => (query.has(name) ? { [name]: Number(query.get(name)) } : {});
  const piece = { section: round(given('diameter')), ...given('gaugeLength'), ...given('parallelLength') };
  const options = { ...given('frameCompliance'), test: { identity: query.get('identity') ?? 'unnamed', invented: true } };
  return analyseTension(readRecord(file).record, piece, options);
}

const answers = {
  '/result.json': (result) => ['application/json', toJson(result)],
  '/page.html': async (result) => ['text/html; charset=utf-8', renderHtml(result, { drawings: await drawFigures(figures(result)) })],
};

const server = createServer(async (request, response) => {
  const send = (status, type, text) => response.writeHead(status, { 'content-type': type, 'x-content-type-options': 'nosniff' }).end(text);
  const refuse = (status, reason) => send(status, 'application/json', JSON.stringify(reason));
  try {
    const { pathname, searchParams } = new URL(request.url, 'http://localhost');
    const answer = Object.hasOwn(answers, pathname) ? answers[pathname] : undefined;
    const length = Number(request.headers['content-length']);
    if (!answer || request.method !== 'POST') refuse(404, { code: 'unknown-address' });
    else if (!(length >= 0)) refuse(411, { code: 'length-missing' });
    else if (length > LIMIT) refuse(413, { code: 'too-large' });
    else send(200, ...(await answer(evaluate(await buffer(request), searchParams))));
  } catch (error) {
    // what the caller can mend is told to the caller; what is ours is not
    if (isInputError(error)) refuse(400, { code: error.code, path: error.path, message: error.message });
    else refuse(500, { code: 'unexpected' });
  }
});
server.requestTimeout = 10_000;

const piece = { section: round({ diameter: 8 }), gaugeLength: 40, parallelLength: 48 };
const { record } = simulateTension({
  material: {
    modulus: 206_000,
    yieldStress: 285,
    hardening: { law: 'swift', prestrain: 0.03, exponent: 0.22 },
    fracture: { extension: 0.3 },
  },
  piece,
  frame: { compliance: 2e-5, slack: 0.3 },
  logger: { rate: 20, forceNoise: 8, lead: 1, tail: 1 },
  seed: 21,
});
const file = writeRecord(record, {
  columns: [
    { quantity: 'time', name: 'Time', unit: 's', decimals: 2 },
    { quantity: 'force', name: 'Force', unit: 'kN', decimals: 4 },
    { quantity: 'travel', name: 'Travel', unit: 'mm', decimals: 4 },
  ],
  preamble: ['Data: invented, made by a simulation'],
});

await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
const post = (address, body) => fetch(`http://127.0.0.1:${server.address().port}${address}`, { method: 'POST', body });
const bar = 'diameter=8&gaugeLength=40&parallelLength=48&frameCompliance=2e-5&identity=bar-21';

const json = await post(`/result.json?${bar}`, file);
const result = fromJson(await json.text(), 'tension');
console.log(json.status, result.test.identity, summarise(result).slice(0, 4).map(({ symbol, text, unit }) => `${symbol} ${text} ${unit}`).join(', ')); // prettier-ignore
console.log(result.findings.filter(({ severity }) => severity !== 'note').map(({ code }) => code).join(', ')); // prettier-ignore

const page = await post(`/page.html?${bar}`, file);
const html = await page.text();
console.log(
  page.status,
  page.headers.get('content-type'),
  `${html.match(/<svg/g).length} figures, marked as invented:`,
  html.includes('Invented data'),
);

for (const [address, body] of [
  [`/result.json?${bar.replace('diameter=8', 'diameter=eight')}`, file],
  ['/result.json?diameter=8', file],
  [`/result.json?${bar}`, 'these are no columns'],
  [`/result.json?${bar}`, 'x'.repeat(LIMIT + 1)],
  ['/elsewhere', file],
]) {
  const refused = await post(address, body);
  const { code, path = '' } = await refused.json();
  console.log(refused.status, code, path);
}
await new Promise((stopped) => {
  server.close(stopped);
  server.closeAllConnections();
});
