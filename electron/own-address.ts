/** The program's own scheme and host. Nothing else is ever shown, asked for or answered. */
export const scheme = 'app';
const host = 'tonne';

export const homeAddress = `${scheme}://${host}/index.html`;

/** Whether an address belongs to the program. Compared as a parsed address: "app://tonne.example" merely begins alike. */
export function isOwnAddress(address: string): boolean {
  let parsed: URL;
  try {
    parsed = new URL(address);
  } catch {
    return false;
  }
  return parsed.protocol === `${scheme}:` && parsed.host === host && parsed.username === '' && parsed.password === '';
}
