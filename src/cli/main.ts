import { numberLocale } from './number-locale.ts';
import { run } from './run.ts';

// Whoever reads may have seen enough ("| head"): then there is nobody left to tell.
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  if (fault.code !== 'EPIPE') throw fault;
  process.exit();
});

process.exitCode = await run(process.argv.slice(2), {
  say: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
  locale: numberLocale(process.env),
});
