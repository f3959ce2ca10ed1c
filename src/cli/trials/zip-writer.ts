import { constants, deflateRawSync } from 'node:zlib';
import { Crc32 } from './crc32.ts';

interface Entry {
  readonly name: Uint8Array;
  readonly at: number;
  readonly crc: Crc32;
  size: number;
  packed: number;
}

/**
 * A zip file written part by part, with no more of it in memory than the part in hand. Sizes stand behind each entry, since they are not
 * known before it (PKWARE Inc., ".ZIP File Format Specification" 6.3.10, 2022, sections 4.3.7 to 4.3.16). Entries are below 4 GB.
 */
export class ZipWriter {
  readonly #entries: Entry[] = [];
  #written = 0;

  begin(name: string): Uint8Array {
    const entry: Entry = {
      name: new TextEncoder().encode(name),
      at: this.#written,
      crc: new Crc32(),
      size: 0,
      packed: 0,
    };
    this.#entries.push(entry);
    return this.#count(
      fields(
        [0x04034b50, 4],
        [20, 2],
        [flags, 2],
        [deflated, 2],
        [0, 2],
        [firstDay, 2],
        [0, 4],
        [0, 4],
        [0, 4],
        [entry.name.length, 2],
        [0, 2],
      ),
      entry.name,
    );
  }

  /** Each part is packed by itself and ends on a whole byte, so that parts stand one behind the other. */
  part(text: string): Uint8Array {
    return this.#packed(text, constants.Z_SYNC_FLUSH);
  }

  endEntry(): Uint8Array {
    const last = this.#packed('', constants.Z_FINISH);
    const { crc, packed, size } = this.#entry();
    return joined(last, this.#count(fields([0x08074b50, 4], [crc.value, 4], [packed, 4], [size, 4])));
  }

  end(): Uint8Array {
    const start = this.#written;
    const list = this.#entries.map(({ name, at, crc, packed, size }) =>
      joined(
        fields(
          [0x02014b50, 4],
          [20, 2],
          [20, 2],
          [flags, 2],
          [deflated, 2],
          [0, 2],
          [firstDay, 2],
          [crc.value, 4],
          [packed, 4],
          [size, 4],
          [name.length, 2],
          [0, 2],
          [0, 2],
          [0, 2],
          [0, 2],
          [0, 4],
          [at, 4],
        ),
        name,
      ),
    );
    const directory = joined(...list);
    const count = this.#entries.length;
    return joined(
      directory,
      fields([0x06054b50, 4], [0, 2], [0, 2], [count, 2], [count, 2], [directory.length, 4], [start, 4], [0, 2]),
    );
  }

  #packed(text: string, finishFlush: number): Uint8Array {
    const bytes = new TextEncoder().encode(text);
    const packed = deflateRawSync(bytes, { finishFlush });
    const entry = this.#entry();
    entry.crc.add(bytes);
    entry.size += bytes.length;
    entry.packed += packed.length;
    return this.#count(packed);
  }

  #entry(): Entry {
    const entry = this.#entries.at(-1);
    if (entry === undefined) throw new Error('No entry was begun');
    return entry;
  }

  #count(...parts: readonly Uint8Array[]): Uint8Array {
    const all = joined(...parts);
    this.#written += all.length;
    return all;
  }
}

/** Sizes stand behind the entry; names are UTF-8. */
const flags = 0x0808;
const deflated = 8;
/** 1 January 1980, the first day that such a file can tell: no clock is asked. */
const firstDay = 0x0021;

function fields(...values: readonly (readonly [value: number, bytes: 2 | 4])[]): Uint8Array {
  const view = new DataView(new ArrayBuffer(values.reduce((sum, [, bytes]) => sum + bytes, 0)));
  let at = 0;
  for (const [value, bytes] of values) {
    if (bytes === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
    at += bytes;
  }
  return new Uint8Array(view.buffer);
}

function joined(...parts: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
