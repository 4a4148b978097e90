import { run } from './run.js';

// who reads may stop reading, as `head` does
process.stdout.on('error', (reason: NodeJS.ErrnoException) => {
  if (reason.code !== 'EPIPE') throw reason;
  process.exit();
});

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  error: (text) => process.stderr.write(text),
  terminal: process.stderr.isTTY,
});
