const PEM = /-----BEGIN CERTIFICATE-----([^-]+)-----END CERTIFICATE-----/g;

/** The certificates of a PEM file, each in DER; null where it holds none, or one that is no base64. */
export async function readRoots(file: Blob): Promise<Uint8Array[] | null> {
  const bodies = [...(await file.text()).matchAll(PEM)].map(([, body = '']) => body.replaceAll(/\s/g, ''));
  if (bodies.length === 0 || !bodies.every((body) => /^[A-Za-z0-9+/]+={0,2}$/.test(body))) return null;
  return bodies.map((body) => Uint8Array.from(atob(body), (letter) => letter.charCodeAt(0)));
}
