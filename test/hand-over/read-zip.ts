import yauzl from 'yauzl';

/** Every file of an archive by its path, inflated; yauzl refuses paths that lead out of it. */
export async function readZip(archive: Buffer): Promise<Map<string, Buffer>> {
  const zip = await yauzl.fromBufferPromise(archive);
  const files = new Map<string, Buffer>();
  for await (const entry of zip.eachEntry()) {
    const pieces: Buffer[] = [];
    for await (const piece of (await zip.openReadStreamPromise(entry)) as AsyncIterable<Buffer>)
      pieces.push(piece);
    files.set(entry.fileName, Buffer.concat(pieces));
  }
  return files;
}

/** Everything that can be read in an archive: the inflated files, and those packed once more inside of them. */
export async function textOfZip(archive: Buffer): Promise<string> {
  const parts: string[] = [];
  for (const [path, content] of await readZip(archive)) {
    parts.push(path, path.endsWith('.xlsx') ? await textOfZip(content) : content.toString('utf8'));
  }
  return parts.join('\n');
}
