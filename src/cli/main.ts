import { endWithReader } from './end-with-reader.ts';
import { numberLocale } from './number-locale.ts';
import { run } from './run.ts';
import { dayOf } from './today.ts';

endWithReader(process.stdout, () => process.exit());

process.exitCode = await run(process.argv.slice(2), {
  say: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
  locale: numberLocale(process.env),
  today: dayOf(new Date()),
  ...(process.stderr.isTTY ? { progress: (text: string) => process.stderr.write(`\r${text}\u001b[K`) } : {}),
  onStop: (stop) => {
    process.once('SIGINT', stop);
    return () => process.off('SIGINT', stop);
  },
});
