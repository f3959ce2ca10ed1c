import { numberLocale } from './number-locale.ts';
import { run } from './run.ts';

process.exitCode = await run(process.argv.slice(2), {
  say: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
  locale: numberLocale(process.env),
});
