// Chromium hands a scheme it does not know to the system before any interception, so that within the browser the program's
// scheme is spelled as a secure site. ".invalid" never resolves (RFC 2606), and main and preload see app://tonne only.
const program = 'app://tonne';
export const browserOrigin = 'https://tonne.invalid';

export function toBrowser(address: string): string {
  return address.startsWith(`${program}/`) ? browserOrigin + address.slice(program.length) : address;
}

export function toProgram(address: string): string {
  return address.startsWith(`${browserOrigin}/`) ? program + address.slice(browserOrigin.length) : address;
}
