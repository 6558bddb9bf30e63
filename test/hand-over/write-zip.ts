import { ZipFile } from 'yazl';

/** An archive of these files, as somebody would make one who changed some. */
export async function writeZip(files: ReadonlyMap<string, Buffer>): Promise<Buffer> {
  const zip = new ZipFile();
  for (const [path, content] of files) {
    if (path.endsWith('/')) zip.addEmptyDirectory(path);
    else zip.addBuffer(content, path);
  }
  zip.end();
  const pieces: Buffer[] = [];
  for await (const piece of zip.outputStream as AsyncIterable<Buffer>) pieces.push(piece);
  return Buffer.concat(pieces);
}
