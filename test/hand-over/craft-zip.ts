import { crc32, deflateRawSync } from 'node:zlib';

/** A file of a crafted archive. What is not said is as an honest program would have it. */
export interface CraftedEntry {
  readonly name: string;
  readonly content: Buffer;
  readonly deflate?: boolean;
  /** The name that stands before the bytes, where it is another than in the list. */
  readonly localName?: string;
  readonly crc?: number;
  /** How many bytes are said to come out. */
  readonly size?: number;
  /** Type and rights as Unix has them, such as 0o120777 for a link. */
  readonly mode?: number;
  /** General purpose bits; 0x800 says that the name is UTF-8, 1 that it is encrypted. */
  readonly flags?: number;
  /** Bytes behind this file that belong to none. */
  readonly gap?: Buffer;
}

/** An archive made byte by byte after APPNOTE.TXT 4.3.7, 4.3.12 and 4.3.16, as no library would make it. */
export function craftZip(entries: readonly CraftedEntry[]): Buffer {
  const body: Buffer[] = [];
  const list: Buffer[] = [];
  let at = 0;
  for (const { name, content, deflate = false, localName = name, gap = Buffer.of(), ...told } of entries) {
    const { crc = crc32(content), size = content.length, mode = 0o100600, flags = 0x800 } = told;
    const packed = deflate ? deflateRawSync(content) : content;
    const common = Buffer.alloc(26);
    common.writeUInt16LE(20, 0);
    common.writeUInt16LE(flags, 2);
    common.writeUInt16LE(deflate ? 8 : 0, 4);
    common.writeUInt16LE(0x6000, 6);
    common.writeUInt16LE(0x5ad4, 8);
    common.writeUInt32LE(crc, 10);
    common.writeUInt32LE(packed.length, 14);
    common.writeUInt32LE(size, 18);
    const local = Buffer.concat([signed(0x04034b50), withName(common, localName), packed, gap]);
    const rest = Buffer.alloc(14);
    rest.writeUInt32LE((mode << 16) >>> 0, 6);
    rest.writeUInt32LE(at, 10);
    const listed = withName(common, name);
    const head = Buffer.concat([listed.subarray(0, 26), rest, listed.subarray(26)]);
    list.push(signed(0x02014b50), Buffer.of(20, 3), head);
    body.push(local);
    at += local.length;
  }
  const directory = Buffer.concat(list);
  const end = Buffer.alloc(18);
  end.writeUInt16LE(entries.length, 4);
  end.writeUInt16LE(entries.length, 6);
  end.writeUInt32LE(directory.length, 8);
  end.writeUInt32LE(at, 12);
  return Buffer.concat([...body, directory, signed(0x06054b50), end]);
}

function signed(signature: number): Buffer {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32LE(signature);
  return bytes;
}

function withName(common: Buffer, name: string): Buffer {
  const bytes = Buffer.from(name);
  const header = Buffer.from(common);
  header.writeUInt16LE(bytes.length, 22);
  return Buffer.concat([header, bytes]);
}
