// A line of a stack trace: "at name (file:///…/main.cjs:12:3)". Only the name of the program's own file and the place in it are kept.
const place = /([\w.-]+\.c?js):(\d+):(\d+)\)?$/u;

/** Where in the program a fault arose, without its message, which may quote what the person typed, and without folders. */
export function faultPlace(fault: unknown): string {
  if (!(fault instanceof Error)) return 'not an error';
  const frames = (fault.stack ?? '')
    .split('\n')
    .flatMap((line) => place.exec(line.trim())?.[0].replace(/\)$/u, '') ?? []);
  return [fault.name, ...frames.slice(0, 4)].join(' ');
}
