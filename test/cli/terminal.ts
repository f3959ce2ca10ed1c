import { run } from '../../src/cli/run.ts';

/** How a command ended and what it wrote. */
export interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs the terminal program in this process, with a console that only listens. */
export async function tonne(args: readonly string[], locale = 'en'): Promise<Ended> {
  const [out, err]: [string[], string[]] = [[], []];
  const code = await run(args, {
    say: (text) => out.push(text),
    complain: (text) => err.push(text),
    locale,
    today: '2026-11-25',
  });
  return { code, out: out.join(''), err: err.join('') };
}

// Tests run from the root of the project.
export const demonstrationFile = 'examples/demonstration.tonne';
export const planFile = 'examples/plan.tonne';

/** What a command writes with --json. */
export async function jsonOf(args: readonly string[]): Promise<unknown> {
  const { code, out, err } = await tonne([...args, '--json']);
  if (code !== 0) throw new Error(`Exit code ${String(code)}: ${err}`);
  return JSON.parse(out);
}
