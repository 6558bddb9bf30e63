import { createHash, randomUUID } from 'node:crypto';
import type { Response } from 'supertest';
import { expect } from 'vitest';
import type { EvidenceWords } from '../../shared/record/evidence-section.js';
import { OCTETS } from '../../src/server/platform/http/read-octets.js';
import { type Browser, create, type House } from '../accounts/house.js';

export const sha256 = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');

export interface Sent {
  readonly name?: string;
  readonly type?: string;
  readonly sha256?: string;
  readonly about?: EvidenceWords;
}

export type Answer = Record<string, unknown> & { id: string };

/** The body of an answer, of which each test looks at its own members. */
export const bodyOf = <T = Answer>({ body }: Response): T => body as T;

export async function openIncident(browser: Browser): Promise<string> {
  const made = await create(browser, '/api/incidents', { call: { said: 'help, PWC 7' } }).expect(201);
  return bodyOf(made).id;
}

/** Writes a section whole; the version is that of a section that nobody has written, unless one is named. */
export async function writeSection(
  browser: Browser,
  incident: string,
  section: string,
  document: object,
  version = 0,
): Promise<void> {
  await browser
    .put(`/api/incidents/${incident}/sections/${section}`)
    .set('If-Match', `"${version}"`)
    .send({ document })
    .expect(200);
}

export const evidenceOf = (incident: string): string => `/api/incidents/${incident}/evidence`;

export async function startUpload(
  browser: Browser,
  incident: string,
  size: number,
  sent: Sent = {},
): Promise<string> {
  const made = await create(browser, `${evidenceOf(incident)}/uploads`, { size, ...sent }).expect(201);
  return bodyOf(made).id;
}

export function sendPiece(browser: Browser, incident: string, upload: string, offset: number, bytes: Buffer) {
  return browser
    .patch(`${evidenceOf(incident)}/uploads/${upload}`)
    .set({ 'content-type': OCTETS, 'upload-offset': String(offset) })
    .send(bytes);
}

export function finish(browser: Browser, incident: string, upload: string) {
  return browser.post(`${evidenceOf(incident)}/uploads/${upload}/finish`).send();
}

/** Sends a whole file and makes evidence of it. */
export async function upload(
  browser: Browser,
  incident: string,
  bytes: Buffer,
  sent: Sent = {},
): Promise<Answer> {
  const id = await startUpload(browser, incident, bytes.length, sent);
  await sendPiece(browser, incident, id, 0, bytes).expect(204);
  const receipt = bodyOf(await finish(browser, incident, id).expect(201));
  expect(receipt).toMatchObject({ id, size: bytes.length, sha256: sha256(bytes) });
  return receipt;
}

/** Counsel with the incident assigned by a manager. */
export async function assignedCounsel(house: House, manager: Browser, incident: string): Promise<Browser> {
  const counsel = await house.person('counsel');
  await create(manager, `/api/incidents/${incident}/counsel`, { account: counsel.id }, randomUUID()).expect(
    (answer) => expect([200, 201, 204]).toContain(answer.status),
  );
  return house.signedIn(counsel);
}
