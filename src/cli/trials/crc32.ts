/** The check sum of zip files (ISO-HDLC polynomial 0xEDB88320, low bit first). Node has one of its own only from version 22 on. */
const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit += 1) value = (value & 1) === 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value >>> 0;
});

export class Crc32 {
  #state = 0xffffffff;

  add(bytes: Uint8Array): void {
    let state = this.#state;
    for (const byte of bytes) state = (state >>> 8) ^ table[(state ^ byte) & 0xff]!;
    this.#state = state >>> 0;
  }

  get value(): number {
    return (this.#state ^ 0xffffffff) >>> 0;
  }
}
